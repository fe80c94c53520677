// Solves pipe networks given in the engine's own input text and gives the head at the junctions asked for.
import startEngine from './engine.mjs';

const HEAD = 10; // EN_HEAD

const engine = await startEngine({ print: () => {}, printErr: () => {} });

function checked(code, what) {
  if (code > 6) throw new Error(`${what}: error ${code}`); // 1 to 6 are warnings
}

const called = (name, ...args) =>
  checked(engine.ccall(name, 'number', args.map(a => (typeof a === 'string' ? 'string' : 'number')), args), name);

/** @returns heads of the junctions, and the milliseconds of one solution, the network being open. */
function solved(project, { text, junctions }, times) {
  const cell = engine._malloc(8);
  engine.FS.writeFile('network.inp', text);
  called('EN_open', project, 'network.inp', 'network.rpt', 'network.out');
  called('EN_openH', project);
  const begin = performance.now();
  for (let n = 0; n < times; n++) {
    called('EN_initH', project, 10); // anew, flows from the start, nothing saved
    called('EN_runH', project, cell);
  }
  const took = (performance.now() - begin) / times;
  const heads = junctions.map(id => {
    called('EN_getnodeindex', project, id, cell);
    called('EN_getnodevalue', project, engine.getValue(cell, 'i32'), HEAD, cell);
    return engine.getValue(cell, 'double');
  });
  called('EN_close', project);
  engine._free(cell);
  return { heads, took };
}

export function solve(networks, times) {
  const at = engine._malloc(4);
  called('EN_createproject', at);
  const project = engine.getValue(at, 'i32');
  try {
    return networks.map(network => solved(project, network, times));
  } finally {
    called('EN_deleteproject', project);
    engine._free(at);
  }
}
