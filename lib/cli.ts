/** Arguments in, problems out, exit status; no other work. Each command is loaded when it is called, so that none waits for another's code. */
import path from "node:path";
import { Command } from "commander";
import { addDialectCommand } from "./commands/dialect-options.ts";

const program = new Command("ampwitness").description("Makes a site of evidence from a folder of charger tests.");

const withWorkspace = (command: Command): Command =>
  command
    .option("--workspace <dir>", "folder that holds data/ and content/", ".")
    .option("--out <dir>", "folder to write the site to; _site in the workspace where left out");

const places = (options: { workspace: string; out?: string }): { workspace: string; out: string } => {
  const workspace = path.resolve(options.workspace);
  return { workspace, out: options.out === undefined ? path.join(workspace, "_site") : path.resolve(options.out) };
};

withWorkspace(program.command("build").description("check the data and write the site"))
  .option("--threads <number>", "how many tests to measure side by side; as many as the machine has processors where left out")
  .option("--shard <n/of>", "only measure a share of the tests, such as 3/8, for a build that has all shares; publish nothing")
  .option("--costs", "tell at the end what time and memory went where")
  .action(async (options) => {
    const { build } = await import("./commands/build.ts");
    process.exitCode = await build({ ...places(options), threads: options.threads, shard: options.shard, costs: options.costs });
  });
withWorkspace(program.command("check").description("check the data; print problems only")).action(async (options) => {
  const { check } = await import("./commands/check.ts");
  process.exitCode = await check(places(options));
});
withWorkspace(program.command("serve").description("build, serve on this machine, and build again when a file changes"))
  .option("--port <number>", "port to try first", "8080")
  .option("--no-open", "do not open a browser")
  .action(async (options) => {
    const { serve } = await import("./commands/serve.ts");
    await serve({ ...places(options), port: Number(options.port), open: options.open });
  });
addDialectCommand(program);
program
  .command("schemas")
  .description("write docs/schemas from the code")
  .option("--check", "only say whether they are up to date")
  .action(async (options) => {
    const { writeSchemas } = await import("./commands/schemas.ts");
    process.exitCode = await writeSchemas(options.check === true);
  });

await program.parseAsync();
