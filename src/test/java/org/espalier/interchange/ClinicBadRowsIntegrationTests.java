package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Every bad row is said with file, line, column and reason; nothing is taken unless all is good or part is asked for.
 */
@IntegrationTest
class ClinicBadRowsIntegrationTests {

    private static final String CHILDREN = """
            local_number,family_name,given_name,birth_date,sex
            1,Quay,Invented,2014-03-02,female
            """;

    private static final String PROCEDURES = """
            local_number,procedure,date,elsewhere,surgeon,note,next_date,next_why,theatre_minutes,anaesthesia_minutes,\
            kind,side,bone,end,plate_side,implant,description,pieces,lots,fate,answers
            """;

    @Autowired
    TestClinic clinic;

    @Autowired
    TestNetwork network;

    @Autowired
    ClinicImport intake;

    @TempDir
    Path folder;

    private TestClinic.Hospital hospital;

    @BeforeEach
    void openHospital() throws IOException {
        hospital = clinic.empty();
        write(ClinicFile.CHILDREN, CHILDREN);
    }

    @Test
    void aChildIsSaidWithItsReason() throws IOException {
        write(ClinicFile.CHILDREN, CHILDREN + """
                1,Twice,,2015-01-01,male
                2,,,2015-01-01,male
                3,Reed,,1.2.2015,male
                4,Reed,,2015-01-01,boy
                5,Reed,,2115-01-01,male
                6,Reed
                """);
        assertThat(problems())
                .containsExactly(
                        "children.csv, line 3, column local_number: \"1\" stands in an earlier row too."
                                + " Each has one row.",
                        "children.csv, line 4, column family_name: this cell is empty. Each row needs it.",
                        "children.csv, line 5, column birth_date: \"1.2.2015\" is not a date."
                                + " Write it as in 2019-07-14.",
                        "children.csv, line 6, column sex: \"boy\" is not known here. Write female | male.",
                        "children.csv, line 7, column ?: A child is born before today, not on 2115-01-01."
                                + " Mend the row.",
                        "children.csv, line 8, column given_name: the row has 2 cells, the header 5.");
        assertThat(childrenOnRecord()).isZero();
    }

    @Test
    void anotherDayOfBirthIsAnotherChild() throws IOException {
        take(Portion.ALL);
        write(ClinicFile.CHILDREN, CHILDREN.replace("2014-03-02", "2014-03-03"));
        assertThat(problems())
                .containsExactly(
                        "children.csv, line 2, column birth_date: the child on record with this number was born on"
                                + " 2014-03-02. Check that it is the same child; change the day on its page.");
    }

    @Test
    void aChangedNameIsTaken() throws IOException {
        take(Portion.ALL);
        write(ClinicFile.CHILDREN, CHILDREN.replace("Quay", "Quay-Reed"));
        assertThat(take(Portion.ALL).counts()).containsExactly(new FileCount(ClinicFile.CHILDREN, 0, 0, 1, 0));
        assertThat(familyNames()).containsExactly("Quay-Reed");
    }

    @Test
    void whatWasFoundIsSaidWithItsReason() throws IOException {
        write(ClinicFile.EXAMINATIONS, """
                local_number,date,kind,entry,item,side,value
                9,2024-01-08,body size,1,height_cm,,141.5
                1,2024-01-08,body weight,1,height_cm,,141.5
                1,2024-01-08,body size,1,height_cm,,tall
                1,2024-01-09,body size,1,height_cm,,1415
                1,2024-01-10,examination,1,thigh_foot_deg,R,200
                1,2024-01-11,examination,1,pain,L,sometimes
                1,2024-01-12,diagnosis,1,diagnosis,,idiopathic valgus
                1,2024-01-13,body size,1,height_cm,,141.5
                1,2024-01-13,body size,1,girth_cm,,70
                1,2010-01-13,body size,1,height_cm,,50
                1,2024-01-14,stage,1,stage,,III
                """);
        assertThat(problems())
                .containsExactly(
                        "examinations.csv, line 2, column local_number: no child that was taken or is on record has the"
                                + " number \"9\".",
                        "examinations.csv, line 3, column kind: \"body weight\" is not known here. Write body size |"
                                + " bone age | diagnosis | examination | laboratory | bone disease | imaging | stage.",
                        "examinations.csv, line 4, column value: \"tall\" is not a number. Write it as in 1234.5.",
                        "examinations.csv, line 5, column ?: A height lies between 30 and 230 cm, not at"
                                + " 1415.0 cm. Mend the row.",
                        "examinations.csv, line 6, column ?: THIGH_FOOT lies between -60 and 70 whole degrees, not at"
                                + " 200.0. Mend the row.",
                        "examinations.csv, line 7, column value: \"sometimes\" is not known here."
                                + " Write none | after effort | every day | at night.",
                        "examinations.csv, line 8, column item: this entry lacks the item sides, or it cannot be read.",
                        "examinations.csv, line 10, column item: \"girth_cm\" is no item of this kind, or not of this"
                                + " side.",
                        "examinations.csv, line 11, column ?: Measured before birth: 2010-01-13. Mend the row.",
                        "examinations.csv, line 12, column side: a stage is one leg’s. Write R or L.");
    }

    @Test
    void whatWasDoneIsSaidWithItsReason() throws IOException {
        write(ClinicFile.IMPLANTS, """
                local_number,implant,description,pieces
                1,P1,plate and two screws,3
                1,P9,never put in,3
                1,P8,,3
                """);
        write(ClinicFile.PROCEDURES, PROCEDURES + """
                1,1,2024-02-01,no,,,2024-05-01,film,,,plate placed,R,femur,distal,medial,P1,,,,,
                1,2,2024-03-01,no,,,2024-05-01,film,,,plate out,L,femur,distal,medial,P2,plate,3,,,
                1,3,2024-03-02,no,,,2024-05-01,film,,,plate glued,R,femur,distal,medial,P3,plate,3,,,
                1,4,2024-03-03,no,,,2024-05-01,film,,,plate placed,R,,,medial,P3,plate,3,,,
                1,5,2024-03-04,no,,,2024-02-01,film,,,osteotomy,L,,,,,wires,2,,,
                1,6,2124-03-04,no,,,2124-05-01,film,,,osteotomy,L,,,,,wires,2,,,
                1,7,2024-03-05,maybe,,,2024-05-01,film,,,osteotomy,L,,,,,wires,2,,,
                1,8,2024-03-06,no,,,2024-05-01,film,,,osteotomy,L,,,,,wires,2,,,
                1,8,2024-03-07,no,,,2024-05-01,film,,,cast on,L,,,,,cast,0,,,
                1,9,2024-03-08,no,,,2024-05-01,film,,,osteotomy,L,,,,,wires,2,,,was it fun: yes
                """);
        assertThat(problems())
                .containsExactly(
                        "implants.csv, line 3, column implant: no good row of procedures.csv puts this implant in.",
                        "implants.csv, line 4, column description: this cell is empty. Each row needs it.",
                        "implants.csv, line 4, column implant: no good row of procedures.csv puts this implant in.",
                        "procedures.csv, line 3, column kind: What this was done to was not in on that day."
                                + " Look at the day, and at what was recorded before.",
                        "procedures.csv, line 4, column kind: \"plate glued\" is not known here. Write "
                                + String.join(
                                        " | ",
                                        Words.all(org.espalier.treatment.ProcedureKind.class)
                                                .keySet()) + ".",
                        "procedures.csv, line 5, column bone: plate placed is done to a physis. Name bone and end.",
                        "procedures.csv, line 6, column ?: The next visit comes after the procedure, not on 2024-02-01."
                                + " Mend the row.",
                        "procedures.csv, line 7, column kind: The day lies before birth or is still to come."
                                + " Mend the day.",
                        "procedures.csv, line 8, column elsewhere: \"maybe\" is not known here. Write yes | no.",
                        "procedures.csv, line 10, column date: line 9 says \"2024-03-06\" of the same procedure."
                                + " Both say the same, or it is another procedure.",
                        "procedures.csv, line 11, column answers: \"was it fun: yes\" is no question with its answer."
                                + " Write each on a line of its own, as in \"plate mid sagittal: yes\".");
    }

    @Test
    void filmsAndReadingsAreSaidWithTheirReasons() throws IOException {
        Files.createDirectories(folder.resolve("films"));
        Files.writeString(folder.resolve("films/note.dcm"), "no film");
        Files.writeString(folder.resolve("secret.dcm"), "no film");
        write(ClinicFile.FILMS, """
                film,local_number,taken_on,file,side,physis
                F1,1,2024-02-01,,R,
                F2,1,2024-02-01,films/note.dcm,R,
                F3,1,2024-02-01,films/../secret.dcm,R,
                """);
        write(ClinicFile.READINGS, """
                local_number,film,reading,reader,started_at,signed_at,second_of,item,side,x_px,y_px,value
                1,F1,1,A. Reader,2024-02-01T09:00:00Z,yesterday,,hip_nail,R,1,2,
                """);
        assertThat(problems())
                .containsExactly(
                        noFile("films.csv, line 2", ""),
                        "films.csv, line 3, column file: This is neither a DICOM film nor a JPEG or PNG photo. Choose"
                                + " another file.",
                        noFile("films.csv, line 4", "films/../secret.dcm"),
                        "readings.csv, line 2, column signed_at: \"yesterday\" is not a point in time."
                                + " Write it in UTC, as in 2024-05-02T09:30:00Z.",
                        "readings.csv, line 2, column film: no good row of films.csv has the film \"F1\"."
                                + " A reading needs its film.",
                        "readings.csv, line 2, column item: \"hip_nail\" is neither a landmark nor another item of a"
                                + " reading.");
    }

    @Test
    void visitsAndStockAreSaidWithTheirReasons() throws IOException {
        write(ClinicFile.VISITS, """
                local_number,state,date,time,booking,reason,note,asked_by,asked_why
                1,arrived,2124-01-01,,,,,,
                1,came,2024-01-01,,,,,,
                1,care ended,2024-01-01,,,,,,
                1,booked,2030-01-01,half past nine,,,,,
                """);
        write(ClinicFile.STOCK, """
                shelf,shelf_kind,owner,back_by,reference,product_kind,product,diameter_mm,\
                core_mm,length_mm,build,material,driver,magnet,traced,sterile,lot,expires,pieces
                Store,store,,,X-1,plate,Invented plate,,,,,,,not known,yes,no,,,3
                Store,drawer,,,X-1,plate,Invented plate,,,,,,,not known,yes,no,L1,,3
                Tray,tray,,,X-1,plate,Invented plate,,,,,,,not known,yes,no,L1; L2,none; none,1
                """);
        assertThat(problems())
                .containsExactly(
                        "stock.csv, line 2, column pieces: This product is traced: say the lot on the label.",
                        "stock.csv, line 3, column shelf_kind: \"drawer\" is not known here."
                                + " Write store | tray | consignment.",
                        "stock.csv, line 4, column pieces: of each lot named there is at least one piece.",
                        "visits.csv, line 2, column ?: A visit that is over was before today, not on 2124-01-01."
                                + " Mend the row.",
                        "visits.csv, line 3, column state: \"came\" is not known here."
                                + " Write planned | booked | arrived | not brought | cancelled | care ended.",
                        "visits.csv, line 4, column reason: care ends without a reason only when growth plates were"
                                + " seen closed. Name the reason, or end care on the child’s page.",
                        "visits.csv, line 5, column time: \"half past nine\" is not a time of day."
                                + " Write it as in 09:30.");
    }

    @Test
    void whatWasDecidedIsSaidWithItsReason() throws IOException {
        write(ClinicFile.PLANS, """
                local_number,date,kind,side,bone,end,plate_side,deformity,implants,intent,\
                expectation,asked_on,theatre_on,past_target_deg
                1,2024-02-01,plate placed,R,femur,distal,lateral,valgus,,,,,,
                1,2024-02-02,plate placed,R,femur,distal,medial,valgus,,,,2024-01-01,,
                1,2024-02-03,plate placed,R,femur,,medial,valgus,,,,soon,,
                """);
        write(ClinicFile.PROCEDURES, PROCEDURES + """
                1,1,2024-02-05,no,,,2024-05-01,film,,,osteotomy,L,,,,,wires,2,wire of steel,,
                1,2,2024-02-06,no,,,2024-05-01,film,,,osteotomy,L,,,,,wires,2,,lost,
                1,3,2024-02-07,no,,,2024-05-01,film,soon,1441,osteotomy,L,,,,,wires,2,,,
                """);
        write(ClinicFile.TARGETS, """
                local_number,date,side,bone,end,degrees,because
                1,2024-02-01,R,femur,distal,200,taller
                1,2124-02-01,R,femur,distal,87,later
                1,2024-02-01,R,femur,distal,87,
                """);
        var kinds = String.join(
                " | ", Words.all(org.espalier.stock.Explant.Fate.class).keySet());
        assertThat(problems())
                .containsExactly(
                        "plans.csv, line 2, column date: A tether on this side lets the planned deformity grow:"
                                + " it takes the medial side. Mend the side, or say that it is a deliberate reversal.",
                        "plans.csv, line 3, column ?: Decided on 2024-02-02, so not asked for on 2024-01-01."
                                + " Mend the row.",
                        "plans.csv, line 4, column end: this cell is empty. Each row needs it.",
                        "plans.csv, line 4, column asked_on: \"soon\" is not a date. Write it as in 2019-07-14.",
                        "procedures.csv, line 2, column lots: \"wire of steel\" is no piece. Write each on a line of"
                                + " its own, as in \"body | two-hole plate | P-16 | A-1 | 2030-01-31 | plate\";"
                                + " what is not known stays empty.",
                        "procedures.csv, line 3, column fate: \"lost\" is not known here. Write " + kinds + ".",
                        "procedures.csv, line 4, column theatre_minutes: \"soon\" is not a number."
                                + " Write it as in 1234.5.",
                        "procedures.csv, line 4, column anaesthesia_minutes: 1441 does not lie between 1 and 1440.",
                        "targets.csv, line 2, column degrees: 200 does not lie between -180 and 180.",
                        "targets.csv, line 3, column date: The day lies before birth or is still to come."
                                + " Mend the day.",
                        "targets.csv, line 4, column because: this cell is empty. Each row needs it.");
    }

    @Test
    void whatWasSeenAndIsKnownOfTheFamilyIsSaidWithItsReason() throws IOException {
        write(ClinicFile.CLOSURES, """
                local_number,date,side,bone,end,reader,retained_told_on,remove_by
                1,2024-02-01,R,,,A. Reader,,
                """);
        write(ClinicFile.COMPLICATIONS, """
                local_number,date,kind,grade,side,note
                1,2024-02-01,other,VI,R,
                1,2024-02-02,other,I,R,
                """);
        write(ClinicFile.FAMILIES, """
                local_number,language,interpreter,transport,school,do_not_contact,safeguarding_lead
                1,English,no,,,,
                """);
        write(ClinicFile.PHONES, """
                local_number,number,owner,language
                1,555-0142,mother,en
                """);
        assertThat(problems())
                .containsExactly(
                        "closures.csv, line 2, column bone: this cell is empty. Each row needs it.",
                        "complications.csv, line 2, column grade: \"VI\" is not known here."
                                + " Write I | II | III | IV | V.",
                        "complications.csv, line 3, column ?: A complication that is not in the list is said in the"
                                + " note. Mend the row.",
                        "families.csv, line 2, column language: \"English\" is no language code."
                                + " Write the two letters of it, as in en.",
                        "phones.csv, line 2, column local_number: no good row of families.csv is of this child."
                                + " A phone needs its family.");
    }

    @Test
    void whatIsOnRecordOfAFamilyIsNotChangedByAFile() throws IOException {
        var families = """
                local_number,language,interpreter,transport,school,do_not_contact,safeguarding_lead
                1,es,yes,,,by order of the court,
                """;
        write(ClinicFile.FAMILIES, families);
        write(ClinicFile.PHONES, """
                local_number,number,owner,language
                1,555-0142,mother,es
                """);
        assertThat(take(Portion.ALL).problems()).isEmpty();
        write(ClinicFile.FAMILIES, families.replace("by order of the court", ""));
        assertThat(problems())
                .containsExactly(
                        "families.csv, line 2, column local_number: how this family is reached is on record, and"
                                + " otherwise than here. A file does not change it:"
                                + " look at the child’s page and mend it there, or leave the row out.",
                        "phones.csv, line 2, column local_number: no good row of families.csv is of this child."
                                + " A phone needs its family.");
    }

    @Test
    void theGoodRowsAreTakenWhenPartIsAskedFor() throws IOException {
        write(ClinicFile.CHILDREN, CHILDREN + "2,Reed,,never,male\n");
        write(ClinicFile.EXAMINATIONS, """
                local_number,date,kind,entry,item,side,value
                1,2024-01-08,body size,1,height_cm,,141.5
                2,2024-01-08,body size,1,height_cm,,141.5
                """);
        assertThat(take(Portion.ALL).taken()).isFalse();
        assertThat(childrenOnRecord()).isZero();
        var report = take(Portion.GOOD_ROWS);
        assertThat(report.taken()).isTrue();
        assertThat(report.problems()).hasSize(2);
        assertThat(report.counts())
                .containsExactly(
                        new FileCount(ClinicFile.CHILDREN, 1, 0, 0, 1),
                        new FileCount(ClinicFile.EXAMINATIONS, 1, 0, 0, 1));
        assertThat(familyNames()).containsExactly("Quay");
    }

    @Test
    void aPreviewSaysTheSameAndKeepsNothing() {
        var report = intake.preview(hospital.site(), new ClinicFolder(folder));
        assertThat(report.counts()).containsExactly(new FileCount(ClinicFile.CHILDREN, 1, 0, 0, 0));
        assertThat(report.taken()).isFalse();
        assertThat(childrenOnRecord()).isZero();
    }

    private static String noFile(String where, String file) {
        return where + ", column file: there is no file \"" + file
                + "\" in the folder films. A film is its picture:"
                + " without it neither the film nor its readings can be taken.";
    }

    private void write(ClinicFile file, String text) throws IOException {
        Files.writeString(folder.resolve(file.fileName()), text);
    }

    private ImportReport take(Portion portion) {
        return intake.take(hospital.site(), new ClinicFolder(folder), portion);
    }

    private List<String> problems() {
        var report = take(Portion.ALL);
        assertThat(report.taken()).isFalse();
        return report.problems().stream().map(FileProblem::asText).toList();
    }

    private long childrenOnRecord() {
        return network.owner()
                .sql("select count(*) from child where site_id = ?")
                .param(hospital.site().value())
                .query(Long.class)
                .single();
    }

    private List<String> familyNames() {
        return network.owner()
                .sql("select family_name from child_identity where site_id = ?")
                .param(hospital.site().value())
                .query(String.class)
                .list();
    }
}
