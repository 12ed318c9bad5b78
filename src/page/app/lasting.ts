/** A value in the browser's database, written through to the disk. What lies in the browser's usual storage gets there a minute later or
 *  so, and is gone when the browser itself is killed before. */
export type Lasting = {
  /** What stands there; undefined where nothing does, or the browser has no such database, or none that answers. */
  readonly read: () => Promise<unknown>;
  readonly write: (value: unknown) => void;
};

/** How long a database is waited for, ms: whoever opens the page is not to wait for one that hangs. */
const PATIENCE = 1000;

const STORE = "kept";

export function lastingAt(key: string): Lasting {
  const opened = new Promise<IDBDatabase>((found, failed) => {
    const opening = indexedDB.open("witnessmark", 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
    opening.onsuccess = () => found(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const read = async (): Promise<unknown> => {
    const asked = (await opened).transaction(STORE).objectStore(STORE).get(key);
    return new Promise((found, failed) => {
      asked.onsuccess = () => found(asked.result);
      asked.onerror = () => failed(asked.error);
    });
  };
  const late = new Promise<undefined>((found) => setTimeout(() => found(undefined), PATIENCE));
  return {
    read: () => Promise.race([read().catch(() => undefined), late]),
    write(value) {
      opened
        .then((database) =>
          database.transaction(STORE, "readwrite", { durability: "strict" }).objectStore(STORE).put(value, key),
        )
        // The usual storage has it too, and tells where it cannot.
        .catch(() => undefined);
    },
  };
}
