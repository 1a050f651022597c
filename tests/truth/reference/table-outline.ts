/** A place or direction on the bed. */
type Plan = readonly [x: number, y: number];

/** How a table is cut: nose to nose, mouths between the unrounded points, shelves from the mouth. */
export interface TableCut {
  readonly lengthM: number;
  readonly widthM: number;
  readonly corner: PocketCut;
  readonly side: PocketCut;
  readonly pointRadiusM: number;
}

interface PocketCut {
  readonly mouthM: number;
  readonly cutRad: number;
  readonly shelfM: number;
}

interface Segment {
  readonly from: Plan;
  readonly to: Plan;
}

interface Arc {
  readonly centre: Plan;
  readonly radiusM: number;
  /** Unit vector towards the tip, and how far that way from the centre the arc begins. */
  readonly tip: Plan;
  readonly leastM: number;
}

interface Hole {
  readonly centre: Plan;
  readonly radiusM: number;
}

/** A table's edges, seen from above. */
export interface Outline {
  readonly segments: readonly Segment[];
  readonly arcs: readonly Arc[];
  readonly holes: readonly Hole[];
}

/** Lines, arcs of the rounded points and holes, one quarter of the table mirrored three times. */
export function tableOutline(cut: TableCut): Outline {
  const quarters = [1, -1].flatMap((sx) => [1, -1].map((sy) => quarterOf(cut, [sx, sy])));
  return {
    segments: quarters.flatMap(({ segments }) => segments),
    arcs: quarters.flatMap(({ arcs }) => arcs),
    holes: quarters.flatMap(({ holes }) => holes),
  };
}

function quarterOf(cut: TableCut, [sx, sy]: Plan): Outline {
  const [x, y] = [cut.widthM / 2, cut.lengthM / 2];
  const back = cut.corner.mouthM * Math.sin(Math.PI / 4);
  const bend = Math.PI - cut.corner.cutRad;
  const sideBend = Math.PI - cut.side.cutRad;
  const place = ([px, py]: Plan): Plan => [sx * px, sy * py];
  const deep = (pocket: PocketCut) => pocket.shelfM + pocket.mouthM / 2;
  const cornerJaw = deep(cut.corner) / Math.cos(Math.PI / 4 - bend);
  const sideJaw = deep(cut.side) / Math.sin(sideBend);
  const end = bentEdge([0, y], [x - back, y], [Math.cos(bend), Math.sin(bend)], cornerJaw, cut);
  const middle: Plan = [x, (cut.side.mouthM / 2 + y - back) / 2];
  const far: Plan = [Math.sin(bend), Math.cos(bend)];
  const side = bentEdge(middle, [x, y - back], far, cornerJaw, cut);
  const out: Plan = [Math.sin(sideBend), -Math.cos(sideBend)];
  const low = bentEdge(middle, [x, cut.side.mouthM / 2], out, sideJaw, cut);
  const inM = back / 2;
  const reach = deep(cut.corner) * Math.SQRT1_2;
  const bends = [end, side, low];
  return {
    segments: bends.flatMap(({ segments }) =>
      segments.map(({ from, to }) => ({ from: place(from), to: place(to) })),
    ),
    arcs: bends.map(({ arc }) => ({ ...arc, centre: place(arc.centre), tip: place(arc.tip) })),
    holes: [
      { centre: place([x - inM + reach, y - inM + reach]), radiusM: cut.corner.mouthM / 2 },
      { centre: place([x + deep(cut.side), 0]), radiusM: cut.side.mouthM / 2 },
    ],
  };
}

/** A straight nose up to its point, a jaw from there, and the round between them. */
function bentEdge(start: Plan, point: Plan, jaw: Plan, jawM: number, { pointRadiusM }: TableCut) {
  const noseM = Math.hypot(start[0] - point[0], start[1] - point[1]);
  const nose: Plan = [(start[0] - point[0]) / noseM, (start[1] - point[1]) / noseM];
  const half = Math.acos(nose[0] * jaw[0] + nose[1] * jaw[1]) / 2;
  const size = 2 * Math.cos(half);
  const inward: Plan = [(nose[0] + jaw[0]) / size, (nose[1] + jaw[1]) / size];
  const cutOff = pointRadiusM / Math.tan(half);
  const on = (way: Plan, byM: number): Plan => [point[0] + byM * way[0], point[1] + byM * way[1]];
  return {
    segments: [
      { from: start, to: on(nose, cutOff) },
      { from: on(jaw, cutOff), to: on(jaw, jawM) },
    ],
    arc: {
      centre: on(inward, pointRadiusM / Math.sin(half)),
      radiusM: pointRadiusM,
      tip: [-inward[0], -inward[1]] as const,
      leastM: pointRadiusM * Math.sin(half),
    },
  };
}

/** How far off the nearest edge a place is, m, and the unit vector towards it. */
export function nearestEdge(outline: Outline, [x, y]: Plan) {
  const onSegments = outline.segments.map(({ from, to }): Plan => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const share = ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy);
    const held = Math.max(0, Math.min(1, share));
    return [from[0] + held * dx, from[1] + held * dy];
  });
  const onArcs = outline.arcs.flatMap(({ centre, radiusM, tip, leastM }): Plan[] => {
    const [dx, dy] = [x - centre[0], y - centre[1]];
    const perM = radiusM / Math.hypot(dx, dy);
    const isOnArc = perM * (dx * tip[0] + dy * tip[1]) >= leastM;
    return isOnArc ? [[centre[0] + perM * dx, centre[1] + perM * dy]] : [];
  });
  let [awayM, towards]: [number, Plan] = [Number.POSITIVE_INFINITY, [0, 0]];
  for (const [px, py] of [...onSegments, ...onArcs]) {
    const distanceM = Math.hypot(px - x, py - y);
    if (distanceM < awayM) {
      [awayM, towards] = [distanceM, [(px - x) / distanceM, (py - y) / distanceM]];
    }
  }
  return { awayM, towards };
}

/** How far outside the nearest hole a place is, m; below 0 over it. */
export function holeGap({ holes }: Outline, [x, y]: Plan): number {
  const gaps = holes.map(
    ({ centre, radiusM }) => Math.hypot(x - centre[0], y - centre[1]) - radiusM,
  );
  return Math.min(...gaps);
}
