// Reads an array of input files (text) as JSON from standard input, runs each through the engine, and writes what it found as
// JSON: for each input the flow of every link and the head of every node, in the units of that input.
import { readFileSync } from "node:fs";
import EpanetModule from "@model-create/epanet-engine";

const HEAD = 10; // property "head" of a node
const FLOW = 8; // property "flow" of a link
const NODES = 0; // count of nodes, tanks and reservoirs
const LINKS = 2; // count of links

const engine = await EpanetModule();
const cell = engine._malloc(8);
const handle = engine._malloc(4);
const text = engine._malloc(64);

function must(code, what) {
  // Codes up to 100 are warnings, such as a pump beyond its curve.
  if (code > 100) {
    throw new Error(`${what}: error ${code}`);
  }
}

function named(project, count, nameOf, valueOf, property) {
  must(engine._EN_getcount(project, count, cell), "count");
  const total = engine.getValue(cell, "i32");
  const values = {};
  for (let i = 1; i <= total; i++) {
    must(nameOf(project, i, text), "name");
    must(valueOf(project, i, property, cell), "value");
    values[engine.UTF8ToString(text)] = engine.getValue(cell, "double");
  }
  return values;
}

function solve(input) {
  engine.FS.writeFile("network.inp", input);
  must(engine._EN_createproject(handle), "create");
  const project = engine.getValue(handle, "i32");
  const [inp, rpt, out] = ["network.inp", "report.rpt", ""].map((name) => engine.stringToNewUTF8(name));
  try {
    must(engine._EN_open(project, inp, rpt, out), "open");
    must(engine._EN_openH(project), "open hydraulics");
    must(engine._EN_initH(project, 0), "initialise");
    const warning = engine._EN_runH(project, cell);
    must(warning, "run");
    return {
      warning,
      flows: named(project, LINKS, engine._EN_getlinkid, engine._EN_getlinkvalue, FLOW),
      heads: named(project, NODES, engine._EN_getnodeid, engine._EN_getnodevalue, HEAD),
    };
  } finally {
    engine._EN_close(project);
    engine._EN_deleteproject(project);
    [inp, rpt, out].forEach((pointer) => engine._free(pointer));
  }
}

const inputs = JSON.parse(readFileSync(0, "utf8"));
process.stdout.write(JSON.stringify(inputs.map(solve)));
