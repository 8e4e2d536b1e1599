/** Where a film is asked for: by its number among the films of the house, or by an address of its own. */
export const filmAddress = (film: string): string => (film.includes('/') ? film : `/api/films/${film}`);

/** Where a reading in the making is measured. */
export const draftAddress = (draft: string): string => (draft.includes('/') ? draft : `/api/readings/${draft}`);
