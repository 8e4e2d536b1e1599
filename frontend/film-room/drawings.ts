import { svg, type SVGTemplateResult } from 'lit';
import type { Side } from './contract.js';
import type { Point } from './viewport.js';

/** Outlines of a left limb as seen facing the child: medial is on the viewer's left. A right limb is mirrored. */
const BONES: Record<string, string[]> = {
  hip: [
    'M40 17A14 14 0 1 0 35 39C39 45 43 52 43 60L44 80H60L61 47C64 38 61 29 56 23C51 24 48 28 45 25Z',
    'M4 14C12 4 34 2 44 12',
  ],
  knee: [
    'M33 0L31 12C28 18 15 20 15 30C15 40 22 43 29 42C35 41 36 37 40 37C44 37 45 41 51 42C58 43 65 40 65 30C65 20 52 18 49 12L47 0Z',
    'M15 49C22 46 34 49 40 46C46 49 58 46 65 49L63 60C56 64 51 68 49 80H32C30 68 24 64 17 60Z',
    'M16 27H64',
    'M17 56H63',
  ],
  ankle: [
    'M32 0L31 26C29 34 26 38 24 44L25 58C28 62 31 60 32 50L55 47C56 42 52 34 50 26L48 0Z',
    'M56 0L57 30L55 62C59 68 66 66 66 56L64 30L62 0Z',
    'M33 54C40 50 48 50 54 53L56 72H30Z',
  ],
  femur: [
    'M37 8A7 7 0 1 0 33 19L36 28L35 60C34 64 28 65 28 70C29 76 34 76 40 74C46 76 52 76 52 70C52 65 46 64 45 60L46 24C47 18 46 13 44 11Z',
  ],
  tibia: ['M26 8C32 5 48 5 54 8L52 14C46 18 45 22 45 30L46 62L48 70L34 72L33 78C31 78 30 76 31 68L34 60L35 30C35 22 33 18 28 14Z'],
  femurSide: ['M35 0C37 20 38 36 34 48C29 54 26 62 30 70C38 77 52 76 55 66C56 58 52 52 48 46C47 34 47 18 47 0Z', 'M29 58L53 60'],
  tibiaSide: ['M25 12L54 15C54 20 48 24 46 32L44 62L47 74L30 73L32 62C30 46 32 32 27 22Z', 'M26 18L53 21'],
  ball: ['M14 0L15 30C12 36 10 40 12 46C15 50 13 60 16 80H32C33 60 31 50 34 46C36 40 34 36 31 30L32 0Z'],
};

const PLATE = 'M67 12H72V42H67Z';
const LOWER_PLATE = 'M67 46H72V72H67Z';
BONES.femurPlate = [...BONES.knee, PLATE, 'M34 18H70', 'M34 36H70'];
BONES.tibiaPlate = [...BONES.knee, LOWER_PLATE, 'M34 52H70', 'M34 66H70'];

const MARKS: Record<string, { bone: string; at: Point; ring?: number }> = {
  hip_centre: { bone: 'hip', at: [30, 26], ring: 14 },
  head_top: { bone: 'hip', at: [27, 12] },
  trochanter_tip: { bone: 'hip', at: [56, 23] },
  femur_shaft_proximal: { bone: 'femur', at: [41, 32] },
  femur_shaft_distal: { bone: 'femur', at: [40, 52] },
  femur_beak_medial: { bone: 'knee', at: [17, 23] },
  femur_beak_lateral: { bone: 'knee', at: [63, 23] },
  femur_physis_medial: { bone: 'knee', at: [16, 27] },
  femur_physis_lateral: { bone: 'knee', at: [64, 27] },
  condyle_medial: { bone: 'knee', at: [27, 42] },
  condyle_lateral: { bone: 'knee', at: [53, 42] },
  plateau_medial: { bone: 'knee', at: [16, 49] },
  plateau_lateral: { bone: 'knee', at: [64, 49] },
  tibia_physis_medial: { bone: 'knee', at: [17, 56] },
  tibia_physis_lateral: { bone: 'knee', at: [63, 56] },
  beak_medial: { bone: 'knee', at: [17, 60] },
  beak_lateral: { bone: 'knee', at: [63, 60] },
  tibia_shaft_proximal: { bone: 'tibia', at: [40, 32] },
  tibia_shaft_distal: { bone: 'tibia', at: [40, 52] },
  plafond_medial: { bone: 'ankle', at: [32, 50] },
  plafond_lateral: { bone: 'ankle', at: [55, 47] },
  epiphysis_base_medial: { bone: 'knee', at: [22, 54] },
  epiphysis_base_lateral: { bone: 'knee', at: [58, 54] },
  plateau_medial_inner: { bone: 'knee', at: [34, 49] },
  plateau_lateral_inner: { bone: 'knee', at: [46, 49] },
  tibia_cortex_proximal: { bone: 'tibia', at: [45, 32] },
  tibia_cortex_distal: { bone: 'tibia', at: [46, 52] },
  patella_centre: { bone: 'knee', at: [40, 28] },
  fibula_head: { bone: 'knee', at: [68, 62] },
  femur_metaphysis_screw_head: { bone: 'femurPlate', at: [70, 18] },
  femur_metaphysis_screw_entry: { bone: 'femurPlate', at: [51, 18] },
  femur_metaphysis_screw_tip: { bone: 'femurPlate', at: [34, 18] },
  femur_epiphysis_screw_head: { bone: 'femurPlate', at: [70, 36] },
  femur_epiphysis_screw_entry: { bone: 'femurPlate', at: [63, 36] },
  femur_epiphysis_screw_tip: { bone: 'femurPlate', at: [34, 36] },
  femur_plate_proximal: { bone: 'femurPlate', at: [69, 13] },
  femur_plate_distal: { bone: 'femurPlate', at: [69, 41] },
  tibia_metaphysis_screw_head: { bone: 'tibiaPlate', at: [70, 66] },
  tibia_metaphysis_screw_entry: { bone: 'tibiaPlate', at: [51, 66] },
  tibia_metaphysis_screw_tip: { bone: 'tibiaPlate', at: [34, 66] },
  tibia_epiphysis_screw_head: { bone: 'tibiaPlate', at: [70, 52] },
  tibia_epiphysis_screw_entry: { bone: 'tibiaPlate', at: [63, 52] },
  tibia_epiphysis_screw_tip: { bone: 'tibiaPlate', at: [34, 52] },
  tibia_plate_proximal: { bone: 'tibiaPlate', at: [69, 47] },
  tibia_plate_distal: { bone: 'tibiaPlate', at: [69, 71] },
  femur_shaft_bend: { bone: 'femurSide', at: [40, 30] },
  tibia_shaft_bend: { bone: 'tibiaSide', at: [38, 48] },
  femur_physis_anterior: { bone: 'femurSide', at: [29, 58] },
  femur_physis_posterior: { bone: 'femurSide', at: [53, 60] },
  plateau_anterior: { bone: 'tibiaSide', at: [25, 12] },
  plateau_posterior: { bone: 'tibiaSide', at: [54, 15] },
  plafond_anterior: { bone: 'tibiaSide', at: [31, 73] },
  plafond_posterior: { bone: 'tibiaSide', at: [46, 74] },
  ball: { bone: 'ball', at: [56, 40], ring: 12 },
};

/** The place on the bone, for the step in hand. A name without a drawing gets none. */
export function drawing(name: string, side: Side | undefined): SVGTemplateResult | undefined {
  const mark = MARKS[name];
  if (!mark) return undefined;
  const [x, y] = mark.at;
  return svg`
    <g transform=${side === 'RIGHT' ? 'matrix(-1 0 0 1 80 0)' : 'matrix(1 0 0 1 0 0)'}>
      ${BONES[mark.bone].map(path => svg`<path class="bone" d=${path}></path>`)}
      ${mark.ring ? svg`<circle class="edge" cx=${x} cy=${y} r=${mark.ring}></circle>` : undefined}
      <circle class="spot" cx=${x} cy=${y} r="3.5"></circle>
      ${mark.ring ? undefined : svg`<circle class="halo" cx=${x} cy=${y} r="8"></circle>`}
    </g>`;
}
