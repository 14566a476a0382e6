/// <reference types="node" />
import { readFile } from "node:fs/promises";
import { hostname } from "node:os";

/** A process that holds something, and by which it can be told whether it still runs. */
export interface Holder {
  readonly pid: number;
  readonly host: string;
  /** When the process began, in the kernel's count, where that can be had: numbers of processes are used again. */
  readonly born?: string;
  /** A name of this one holding; it never comes again. */
  readonly nonce: string;
}

/** This process as a holder. */
export async function holderHere(nonce: string): Promise<Holder> {
  const born = (await processState(process.pid))?.born;
  return { pid: process.pid, host: hostname(), nonce, ...(born === undefined ? {} : { born }) };
}

/** Who a file says holds it; nothing where there is no such file, and `unknown` where it does not say. */
export async function holderIn(path: string): Promise<Holder | "unknown" | undefined> {
  let text: string;
  try {
    text = await readFile(path, "utf8");
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
  try {
    const value: unknown = JSON.parse(text);
    return isHolder(value) ? value : "unknown";
  } catch {
    return "unknown";
  }
}

/** Whether a holder is surely gone. Of another machine's processes nothing is known. */
export async function isGone(holder: Holder | "unknown"): Promise<boolean> {
  if (holder === "unknown" || holder.host !== hostname()) return false;
  try {
    process.kill(holder.pid, 0);
  } catch (error) {
    return codeOf(error) === "ESRCH";
  }
  const state = await processState(holder.pid);
  if (state === undefined) return false;
  return state.isDead || (holder.born !== undefined && holder.born !== state.born);
}

/** Whether an error comes from the operating system, which numbers its errors, and not from a mistake in a program. */
export function isSystemError(error: unknown): boolean {
  return error instanceof Error && "code" in error && "errno" in error && typeof error.errno === "number";
}

/** The code of a system error. */
export function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "unknown error";
}

/**
 * What Linux tells of a process (proc(5), /proc/pid/stat: field 3 is the state, field 22 the start time); other
 * systems tell nothing here.
 */
async function processState(
  pid: number,
): Promise<{ readonly born: string; readonly isDead: boolean } | undefined> {
  if (process.platform !== "linux") return undefined;
  try {
    const text = await readFile(`/proc/${pid}/stat`, "utf8");
    // The second field, a name in brackets, may hold anything.
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    const [state = "", born = ""] = [fields[0], fields[19]];
    return { born, isDead: state === "Z" || state === "X" };
  } catch {
    return undefined;
  }
}

function isHolder(value: unknown): value is Holder {
  if (typeof value !== "object" || value === null) return false;
  const { pid, host, nonce } = value as Partial<Record<keyof Holder, unknown>>;
  return (
    Number.isSafeInteger(pid) && Number(pid) > 0 && typeof host === "string" && typeof nonce === "string"
  );
}
