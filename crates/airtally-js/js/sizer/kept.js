// Keeping a house on the device: only where the host page asks for it by name, and only in its own storage.

const PREFIX = "airtally.sizer.";

/** What was kept under this name, as text. */
export function kept(name) {
  if (!name) return null;
  try {
    return localStorage.getItem(PREFIX + name);
  } catch {
    return null;
  }
}

/** Whether all is well: where storage is forbidden or full the house stays on the page. */
export function keep(name, house) {
  if (!name) return true;
  try {
    localStorage.setItem(PREFIX + name, JSON.stringify(house));
    return true;
  } catch {
    return false;
  }
}

/** Moves what cannot be read aside, so that nothing is written over it. */
export function forget(name) {
  if (!name) return;
  try {
    const text = localStorage.getItem(PREFIX + name);
    if (text !== null) localStorage.setItem(`${PREFIX}${name}.aside.${new Date().toISOString()}`, text);
    localStorage.removeItem(PREFIX + name);
  } catch {
    // Storage is forbidden or full.
  }
}
