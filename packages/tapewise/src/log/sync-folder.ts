/// <reference types="node" />
import { open } from "node:fs/promises";
import { dirname } from "node:path";

/** Makes a name in a folder last through a loss of power, where the system lets a folder be synced. */
export async function syncFolder(path: string): Promise<void> {
  if (process.platform === "win32") return;
  const folder = await open(dirname(path), "r");
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}
