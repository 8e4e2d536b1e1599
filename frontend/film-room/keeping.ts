import type { Placed } from './measuring.js';

/**
 * Points not yet saved, kept in this tab so that a reload or a new sign-in loses nothing. Only pixel positions under
 * the draft's number: no name, no film.
 */
export interface Kept extends Placed {
  revision: number;
}

const key = (draft: string) => `espalier.draft.${draft}`;

export function keep(draft: string, kept: Kept): void {
  try {
    sessionStorage.setItem(key(draft), JSON.stringify(kept));
  } catch {
    // A full or forbidden store leaves the points in memory; they are still sent again.
  }
}

export function kept(draft: string): Kept | undefined {
  const text = sessionStorage.getItem(key(draft));
  return text ? (JSON.parse(text) as Kept) : undefined;
}

export function forget(draft: string): void {
  sessionStorage.removeItem(key(draft));
}
