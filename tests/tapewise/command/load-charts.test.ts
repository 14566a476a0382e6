import { expect, test } from "vitest";
import { folderWith, runCommand } from "../run-command.ts";

const at = folderWith({ "empty.csv": "" });

test.each([[["served"]], [["stock", "--members", "40", "--chance", "0.95"]]])(
  "%j prints issues as JSON when no chart can be read",
  async (argv) => {
    const { status, stdout } = await runCommand([...argv, "--chart", at("empty.csv"), "--json"]);
    expect(status).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({ id: null, issues: [{ code: "file-empty" }] });
  },
);
