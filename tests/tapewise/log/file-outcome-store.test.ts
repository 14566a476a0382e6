import {
  appendFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { basename, dirname, join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { type OutcomeRow, writeOutcomeLine } from "@tapewise/afterwards";
import { InvalidArgumentError, IssuesError, unwrap } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { fileOutcomeStore } from "tapewise/log";
import { describe, expect, test } from "vitest";
import { contentsOf, newLog, rowOf } from "./outcome-rows.ts";
import { rowToWrite } from "./row-to-write.ts";
import { logWorkers } from "./workers.ts";

const quick = { sync: false } as const;
const lineOf = (id: string, more = {}): string => writeOutcomeLine(rowOf({ id, ...more }));

describe("one process", () => {
  test("a log that is not there yet is empty, and forgetting somebody changes nothing", async () => {
    const path = newLog();
    expect(await contentsOf(path)).toEqual({ rows: [], codes: [] });
    expect(unwrap(await fileOutcomeStore(path).forget("p1"))).toEqual({ rows: 0, unreadable: 0 });
    expect(existsSync(path)).toBe(false);
  });

  test("rows come back in their order, each a line", async () => {
    const path = newLog();
    const store = fileOutcomeStore(path);
    const rows = [rowOf({ id: "a" }), rowOf({ id: "b", person: "p\u2028\n1" }), rowOf({ id: "c" })];
    // Not waited for one by one: the order is that of the calls.
    await Promise.all(rows.map((row) => store.append(row)));
    expect(await contentsOf(path)).toEqual({ rows, codes: [] });
    expect(readFileSync(path, "utf8").split("\n")).toHaveLength(4);
  });

  test("a row without an id is given one, and comes back with it", async () => {
    const path = newLog();
    const store = fileOutcomeStore(path, quick);
    const [one, other] = [unwrap(await store.append(rowOf())), unwrap(await store.append(rowOf()))];
    expect(one.id).toMatch(/^[0-9a-f-]{36}$/);
    expect(other.id).not.toBe(one.id);
    expect((await contentsOf(path)).rows).toEqual([one, other]);
  });

  test("what is no row is refused, and nothing is written", async () => {
    const path = newLog();
    const outcome = await fileOutcomeStore(path).append(rowOf({ at: "yesterday" }));
    expect(outcome.issues.map(({ code }) => code)).toEqual(["outcome-field-invalid"]);
    expect(existsSync(path)).toBe(false);
  });

  test("a mistake of a program is thrown as it is, and those who come after are served", async () => {
    const path = newLog();
    const store = fileOutcomeStore(path, quick);
    const odd: OutcomeRow = {
      ...rowOf(),
      get size(): string {
        throw new TypeError("a mistake");
      },
    };
    await expect(store.append(rowOf({ id: "a" }))).resolves.toMatchObject({ ok: true });
    await expect(store.append(odd)).rejects.toThrow(TypeError);
    await expect(store.append(rowOf({ id: "b" }))).resolves.toMatchObject({ ok: true });
    expect((await contentsOf(path)).rows).toHaveLength(2);
    // A path that no system takes has a code, and yet the system never saw it.
    const unsayable = fileOutcomeStore("a\0b", quick);
    await expect(unsayable.append(rowOf())).rejects.toMatchObject({ code: "ERR_INVALID_ARG_VALUE" });
    await expect(unsayable.forget("p1")).rejects.toMatchObject({ code: "ERR_INVALID_ARG_VALUE" });
    await expect(contentsOf("a\0b")).rejects.toMatchObject({ code: "ERR_INVALID_ARG_VALUE" });
  });

  test("what the system refuses is an issue with its code", async () => {
    // A folder is no file.
    const outcome = await fileOutcomeStore(dirname(newLog()), quick).append(rowOf());
    expect(outcome.issues.map(({ code, facts }) => [code, facts.reason])).toEqual([
      ["file-unwritable", "EISDIR"],
    ]);
  });

  test("a person who looks like an address is kept with a warning that does not repeat it", async () => {
    const outcome = await fileOutcomeStore(newLog(), quick).append(rowOf({ person: "ana@example.org" }));
    expect(outcome.ok).toBe(true);
    expect(outcome.issues.map(({ code }) => code)).toEqual(["outcome-person-identifying"]);
    expect(JSON.stringify(outcome.issues)).not.toContain("ana@");
  });

  test("bad lines are reported with their number, passed over and left in the file", async () => {
    const path = newLog();
    const bad = ["{", "", '{"v":7,"person":"p9"}', "[1]", "x".repeat(100_001), '{"v":1}'];
    const text = Buffer.concat([
      Buffer.from(`${lineOf("a")}\n${bad.join("\n")}\n`),
      Buffer.of(0xff, 0x0a),
      Buffer.from(`${lineOf("b")}\r\n`),
    ]);
    writeFileSync(path, text);
    const { rows, codes } = await contentsOf(path);
    expect(rows.map(({ id }) => id)).toEqual(["a", "b"]);
    expect([...new Set(codes)]).toEqual([
      "2: outcome-line-not-json",
      "4: outcome-version-newer",
      "5: outcome-not-an-object",
      "6: outcome-line-too-long",
      "7: outcome-field-missing",
      "8: outcome-line-not-utf8",
    ]);
    unwrap(await fileOutcomeStore(path, quick).append(rowOf({ id: "c" })));
    expect(readFileSync(path).subarray(0, text.length).equals(text)).toBe(true);
  });

  test("a log that cannot be written or read says why", async () => {
    const path = dirname(newLog());
    const [issue] = (await fileOutcomeStore(path).append(rowOf())).issues;
    expect([issue?.code, issue?.facts.reason]).toEqual(["file-unwritable", "EISDIR"]);
    await expect(contentsOf(path)).rejects.toThrow(IssuesError);
    expect(() => fileOutcomeStore("")).toThrow(InvalidArgumentError);
    expect(() => fileOutcomeStore("a", { patienceMs: Number.NaN })).toThrow(InvalidArgumentError);
  });
});

describe("a line that breaks off", () => {
  test("at any byte: it is reported, the next row begins a line of its own, and nothing else is lost", async () => {
    const torn = Buffer.from(lineOf("b", { product: { chart: "Doïly 45" } }));
    for (let length = 1; length < torn.length; length += 1) {
      const path = newLog();
      writeFileSync(path, Buffer.concat([Buffer.from(`${lineOf("a")}\n`), torn.subarray(0, length)]));
      expect((await contentsOf(path)).codes).toEqual(["2: outcome-line-torn"]);
      unwrap(await fileOutcomeStore(path, quick).append(rowOf({ id: "c" })));
      const { rows, codes } = await contentsOf(path);
      expect(rows.map(({ id }) => id)).toEqual(["a", "c"]);
      expect(codes).toHaveLength(1);
      expect(codes[0]).toMatch(/^2: outcome-line-not-(json|utf8)$/);
    }
  });

  test("right before its end: it is a row, and stays one", async () => {
    const path = newLog();
    writeFileSync(path, lineOf("a"));
    expect((await contentsOf(path)).codes).toEqual([]);
    unwrap(await fileOutcomeStore(path, quick).append(rowOf({ id: "b" })));
    expect((await contentsOf(path)).rows.map(({ id }) => id)).toEqual(["a", "b"]);
  });
});

describe("forgetting", () => {
  test("nobody has an empty name, and what cannot be read stays", async () => {
    const path = newLog();
    const torn = `${lineOf("a")}\n{"v":1,"maker":"","at":"\n{"v":1,"id":"b"`;
    writeFileSync(path, torn);
    expect(unwrap(await fileOutcomeStore(path, quick).forget(""))).toEqual({ rows: 0, unreadable: 0 });
    expect(readFileSync(path, "utf8")).toBe(torn);
  });

  test("removes the rows of one person and leaves every other byte", async () => {
    const path = newLog();
    const others = [lineOf("a", { person: "p1" }), "{ bad", "", lineOf("c", { person: "p10" }), lineOf("d")];
    const own = [lineOf("b", { person: "p1\u20282" }), lineOf("e", { person: "p1\u20282" })];
    writeFileSync(path, `${[others[0], own[0], ...others.slice(1), own[1]].join("\n")}\n`, { mode: 0o640 });
    expect(unwrap(await fileOutcomeStore(path).forget("p1\u20282"))).toEqual({ rows: 2, unreadable: 0 });
    expect(readFileSync(path, "utf8")).toBe(`${others.join("\n")}\n`);
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(readdirSync(dirname(path))).toEqual([basename(path)]);
  });

  test("removes lines that cannot be read and have the person as their person, half names left aside", async () => {
    const path = newLog();
    const named = [
      '{"v":7,"person":"p1"}',
      '{"v":1,"person":"p1","size',
      '{"person": "p1"}',
      '{"person": "p1"',
    ];
    const unnamed = ['{"v":7,"person":"p2"}', '{"person":"p', '{"v":1,"person":"p12', '{"v":1,"person":"p1'];
    writeFileSync(path, [...named, ...unnamed].join("\n"));
    expect(unwrap(await fileOutcomeStore(path).forget("p1"))).toEqual({ rows: 0, unreadable: 4 });
    expect(readFileSync(path, "utf8")).toBe(unnamed.join("\n"));
  });

  test("a word in any other field names nobody: sizes, members and rows of another version stay", async () => {
    const path = newLog();
    const others = [
      '{"v":2,"person":"robin","size":"M"}',
      '{"id":"M","readings":{"torso-length":["43 cm"]}}',
      '{"v":1,"person":"robin","size":"M","outc',
      '{"v":1,"product":{"chart":"say \\"person\\":\\"M\\""},"si',
    ].join("\n");
    writeFileSync(path, others);
    expect(unwrap(await fileOutcomeStore(path).forget("M"))).toEqual({ rows: 0, unreadable: 0 });
    expect(readFileSync(path, "utf8")).toBe(others);
  });

  test("through a link, the file that it leads to is rewritten", async () => {
    const path = newLog();
    const link = join(dirname(newLog()), "link");
    writeFileSync(path, `${lineOf("a", { person: "p1" })}\n${lineOf("b")}\n`);
    symlinkSync(path, link);
    unwrap(await fileOutcomeStore(link).forget("p1"));
    expect(readFileSync(path, "utf8")).toBe(`${lineOf("b")}\n`);
  });

  test("a lock whose holder lives is waited for, and one whose holder died is taken away", async () => {
    const path = newLog();
    appendFileSync(path, `${lineOf("a", { person: "p1" })}\n`);
    const hold = (holder: object) =>
      writeFileSync(`${path}.lock`, JSON.stringify({ host: hostname(), nonce: "n", ...holder }));
    const store = fileOutcomeStore(path, { sync: false, patienceMs: 50 });

    hold({ pid: process.pid });
    expect((await store.forget("p1")).issues[0]?.code).toBe("outcome-log-busy");
    expect((await store.append(rowOf())).issues[0]?.code).toBe("outcome-log-busy");
    // Of another machine's processes nothing is known here.
    hold({ pid: 4_194_305, host: "elsewhere" });
    expect((await store.forget("p1")).issues[0]?.facts.who).toBe("process 4194305 on elsewhere");
    writeFileSync(`${path}.lock`, "");
    expect((await store.append(rowOf())).issues[0]?.facts.who).toBe("somebody unknown");
    expect((await contentsOf(path)).rows).toHaveLength(1);

    // Linux gives no process a number above 2^22 (proc(5), pid_max).
    hold({ pid: 4_194_305 });
    expect((await store.append(rowOf({ id: "b" }))).ok).toBe(true);
    expect(unwrap(await store.forget("p1")).rows).toBe(1);
    expect(readdirSync(dirname(path))).toEqual([basename(path)]);
  });

  test("a lock that was left by a process with a number that is used again is taken away", async () => {
    const path = newLog();
    appendFileSync(path, `${lineOf("a", { person: "p1" })}\n`);
    const holder = { pid: process.pid, host: hostname(), nonce: "n", born: "1" };
    writeFileSync(`${path}.lock`, JSON.stringify(holder));
    const outcome = await fileOutcomeStore(path, { patienceMs: 50 }).forget("p1");
    // Only Linux tells when a process began.
    expect(outcome.ok).toBe(process.platform === "linux");
  });

  test("the right to take a lock away goes on from a dead one to the next, and what they left goes away", async () => {
    const path = newLog();
    appendFileSync(path, `${lineOf("a", { person: "p1" })}\n`);
    const dead = (nonce: string) => JSON.stringify({ pid: 4_194_305, host: hostname(), nonce });
    writeFileSync(`${path}.lock`, dead("n1"));
    writeFileSync(`${path}.lock.after.n1`, dead("n2"));
    writeFileSync(`${path}.lock.after.n2`, dead("n3"));
    writeFileSync(`${path}.00000000-0000-4000-8000-000000000000.next`, "half a copy");
    const stores = Array.from({ length: 5 }, () => fileOutcomeStore(path));
    const removed = await Promise.all(stores.map(async (store) => unwrap(await store.forget("p1")).rows));
    expect(removed.toSorted()).toEqual([0, 0, 0, 0, 1]);
    expect(readdirSync(dirname(path))).toEqual([basename(path)]);
  });
});

/** How many times the writer is killed; the environment may ask for thousands. */
const kills = Number(process.env.TAPEWISE_LOG_KILLS ?? 200);

describe("several processes", { timeout: 120_000 + kills * 1000 }, () => {
  const start = logWorkers();

  test("a writer that is killed over and over loses at most the row that it was writing", async () => {
    const path = newLog();
    const random = createRandom(20260504);
    const said = new Map<string, number>();
    const lane = async (name: string): Promise<void> => {
      for (let k = 0; k < kills / 2; k += 1) {
        const writer = `${name}${k}`;
        const worker = start("write", path, writer, "1000000");
        while (worker.kept() === 0 && worker.process.exitCode === null) await sleep(2);
        await sleep(random.uniform() * 20);
        worker.process.kill("SIGKILL");
        expect(await worker.ended).toBe("");
        said.set(writer, worker.kept());
      }
    };
    await Promise.all([lane("a"), lane("b")]);

    const { rows, codes } = await contentsOf(path);
    const found = new Map<string, number[]>();
    for (const { id = "" } of rows) {
      const [writer = "", k] = id.split("-");
      found.set(writer, [...(found.get(writer) ?? []), Number(k)]);
    }
    for (const [writer, kept] of said) {
      const numbers = found.get(writer) ?? [];
      expect(numbers).toEqual(numbers.map((_, k) => k));
      expect(numbers.length - kept).toBeGreaterThanOrEqual(0);
      expect(numbers.length - kept).toBeLessThanOrEqual(1);
    }
    expect(said.size).toBeGreaterThanOrEqual(kills);
    expect(rows.length).toBeGreaterThan(kills);
    // A killed writer leaves half a line at most.
    expect(codes.length).toBeLessThanOrEqual(kills);
  });

  test("eight writers at once lose nothing, and write nothing twice", async () => {
    const path = newLog();
    const [writers, count] = [8, 200];
    const workers = Array.from({ length: writers }, (_, w) =>
      start("write", path, `w${w}`, `${count}`, w === 0 ? "sync" : ""),
    );
    expect(await Promise.all(workers.map(({ ended }) => ended))).toEqual(workers.map(() => ""));
    const { rows, codes } = await contentsOf(path);
    expect(codes).toEqual([]);
    expect(rows).toHaveLength(writers * count);
    for (let w = 0; w < writers; w += 1) {
      const own = rows.filter(({ id }) => id?.startsWith(`w${w}-`));
      expect(own).toEqual(Array.from({ length: count }, (_, k) => rowToWrite(`w${w}`, k)));
    }
  });

  test("forgetting somebody while others write, and dying at it, loses nothing of the others", async () => {
    const path = newLog();
    const random = createRandom(7);
    const [writers, count] = [4, 150];
    const workers = Array.from({ length: writers }, (_, w) => start("write", path, `w${w}`, `${count}`));
    const steady = start("forget", path, "gone", "60");
    let isDone = false;
    const dying = async (): Promise<void> => {
      while (!isDone) {
        const worker = start("forget", path, "gone", "1000000");
        while (worker.kept() === 0 && worker.process.exitCode === null) await sleep(2);
        await sleep(random.uniform() * 20);
        worker.process.kill("SIGKILL");
        expect(await worker.ended).toBe("");
      }
    };
    const killed = dying();
    const complaints = await Promise.all([...workers, steady].map(({ ended }) => ended));
    isDone = true;
    await killed;
    expect(complaints).toEqual(complaints.map(() => ""));
    unwrap(await fileOutcomeStore(path).forget("gone"));
    const { rows, codes } = await contentsOf(path);
    expect(codes).toEqual([]);
    const expected = Array.from({ length: writers }, (_, w) =>
      Array.from({ length: count }, (_, k) => rowToWrite(`w${w}`, k)).filter(
        ({ person }) => person !== "gone",
      ),
    ).flat();
    const byId = (a: { id?: string }, b: { id?: string }) => ((a.id ?? "") < (b.id ?? "") ? -1 : 1);
    expect(rows.toSorted(byId)).toEqual(expected.toSorted(byId));
    // Of whoever was killed before it wrote who it is, an empty file is left, and nobody can tell whose.
    const left = readdirSync(dirname(path)).filter((name) => statSync(join(dirname(path), name)).size > 0);
    expect(left).toEqual([basename(path)]);
  });
});
