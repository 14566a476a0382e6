/**
 * Circles of a directed graph, each as a path that ends where it began. Not every circle is listed,
 * but where there is one, one is.
 */
export function findCircles(edges: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const done = new Set<string>();
  const circles: (readonly string[])[] = [];

  const walk = (node: string, trail: readonly string[]): void => {
    const seen = trail.indexOf(node);
    if (seen >= 0) {
      circles.push([...trail.slice(seen), node]);
      return;
    }
    if (done.has(node)) return;
    for (const next of edges.get(node) ?? []) walk(next, [...trail, node]);
    done.add(node);
  };

  for (const node of edges.keys()) walk(node, []);
  return circles;
}
