/** A resistor between two numbered nodes. */
export type Numbered = { a: number; b: number; ohms: number };

/** Up to here a resistor is a joint, from there on it connects nothing: further apart than any bench meter tells. */
const [jointOhms, nothingOhms] = [1e-3, 1e12];

/** A branch of a shape; `at` is its place in the network it came from. */
export type Branch = { a: number; b: number; at: number };

/** What of a network carries current between the terminals. The first terminal is node 1, the second node 0. */
export type Shape = {
  state: 'ohms' | 'short' | 'open';
  size: number;
  branches: Branch[];
  /** Whether a node of the network is one of the shape's. */
  holds: (node: number) => boolean;
};

/** Joins what is joined, drops what leads nowhere. The shape stays while joints stay joints. */
export function shapeOf(network: readonly Numbered[], from: number, to: number): Shape {
  const point = joinedPoints(network, Math.max(from, to));
  const [start, end] = [point(from), point(to)];
  if (start === end) return { state: 'short', size: 0, branches: [], holds: (node) => point(node) === end };
  const live = liveBranches(branchesOf(network, point), start, end);
  if (!live.some(({ a, b }) => a === start || b === start)) {
    return { state: 'open', size: 0, branches: [], holds: () => false };
  }
  const places = [end, start];
  const placeOf = (node: number) => {
    const place = places.indexOf(node);
    return place < 0 ? places.push(node) - 1 : place;
  };
  const branches = live.map(({ a, b, at }) => ({ a: placeOf(a), b: placeOf(b), at }));
  return { state: 'ohms', size: places.length, branches, holds: (node) => places.includes(point(node)) };
}

/** Which nodes are one point: each node's representative. */
function joinedPoints(network: readonly Numbered[], highest: number): (node: number) => number {
  let count = highest + 1;
  for (const { a, b } of network) count = Math.max(count, a + 1, b + 1);
  // A plain loop over a typed array: this is the innermost work of a table of faults.
  const parents = new Int32Array(count);
  for (let node = 0; node < count; node++) parents[node] = node;
  const root = (node: number): number => {
    let here = node;
    let parent = parents[here] ?? here;
    while (parent !== here) {
      const above = parents[parent] ?? parent;
      parents[here] = above;
      here = above;
      parent = parents[here] ?? here;
    }
    return here;
  };
  for (const { a, b, ohms } of network) if (ohms <= jointOhms) parents[root(b)] = root(a);
  return root;
}

function branchesOf(network: readonly Numbered[], point: (node: number) => number): Branch[] {
  const branches: Branch[] = [];
  network.forEach((one, at) => {
    if (one.ohms <= jointOhms || one.ohms >= nothingOhms) return;
    const a = point(one.a);
    const b = point(one.b);
    if (a !== b) branches.push({ a, b, at });
  });
  return branches;
}

/** Without what no current can enter: dead ends, loops that hang on one terminal, and islands. */
function liveBranches(branches: readonly Branch[], start: number, end: number): Branch[] {
  let kept = reachable(reachable(branches, start, end), end, start);
  for (let before = -1; before !== kept.length; ) {
    before = kept.length;
    const isDead = (node: number) =>
      node !== start && node !== end && kept.filter(({ a, b }) => a === node || b === node).length === 1;
    kept = kept.filter(({ a, b }) => !isDead(a) && !isDead(b));
  }
  return kept;
}

/** The branches that a walk from `start` meets when it turns back at `wall`. */
function reachable(branches: readonly Branch[], start: number, wall: number): Branch[] {
  const seen = [start];
  const isSeen = (node: number) => node !== wall && seen.includes(node);
  for (let before = 0; before !== seen.length; ) {
    before = seen.length;
    for (const { a, b } of branches) {
      if (isSeen(a) && !seen.includes(b)) seen.push(b);
      if (isSeen(b) && !seen.includes(a)) seen.push(a);
    }
  }
  return branches.filter(({ a, b }) => isSeen(a) || isSeen(b));
}
