// Values from outside that the probabilities and expected misfits of fit are held against, each with how it
// was had, to 16 digits.

/** A length centre + scale × T held against an interval: P(below), P(inside), P(above), E(distance). */
export interface MisfitCase {
  readonly meanMm: number;
  readonly sdMm: number;
  readonly degreesOfFreedom: number;
  readonly from: number;
  readonly to: number;
  readonly below: number;
  readonly inside: number;
  readonly above: number;
  readonly misfitMm: number;
}

// Origin: recomputed with mpmath 1.2.1 at 40 digits: quadrature of the density, and of distance times density,
// in panels that double in width away from the end; its tails agree with mpmath's ncdf and betainc.
export const misfitCases: readonly MisfitCase[] = [
  {
    meanMm: 437,
    sdMm: 8.3,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    from: 430,
    to: 445,
    below: 0.1995097956142165,
    inside: 0.6329309963398468,
    above: 0.1675592080459366,
    misfitMm: 1.664130180317264,
  },
  {
    meanMm: 400,
    sdMm: 22.7,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    from: 380,
    to: 430,
    below: 0.1891434120049084,
    inside: 0.7177035479448074,
    above: 0.09315304005028419,
    misfitMm: 3.346972839569886,
  },
  {
    meanMm: 500,
    sdMm: 5,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    from: 430,
    to: 480,
    below: 7.7935368191928e-45,
    inside: 3.167124183311992e-5,
    above: 0.9999683287581669,
    misfitMm: 20.00003572629216,
  },
  {
    meanMm: 437,
    sdMm: 8.3,
    degreesOfFreedom: 7.5,
    from: 430,
    to: 445,
    below: 0.2125489875941906,
    inside: 0.6048704736725571,
    above: 0.1825805387332523,
    misfitMm: 2.333146209565679,
  },
  {
    meanMm: 437,
    sdMm: 8.3,
    degreesOfFreedom: 3,
    from: 430,
    to: 445,
    below: 0.230476760556561,
    inside: 0.5664134565170837,
    above: 0.2031097829263552,
    misfitMm: 3.954829263450272,
  },
  {
    meanMm: 500,
    sdMm: 5,
    degreesOfFreedom: 2.5,
    from: 430,
    to: 480,
    below: 0.0009688579203266653,
    inside: 0.01853763000033246,
    above: 0.9804935120793409,
    misfitMm: 20.32741034082229,
  },
  {
    meanMm: 452,
    sdMm: 9.4,
    degreesOfFreedom: 25,
    from: 380,
    to: 460,
    below: 2.571831344591706e-8,
    inside: 0.7985938025645795,
    above: 0.2014061717171071,
    misfitMm: 1.133990360083287,
  },
];

/** Mass above a bound of a standard normal variable, and its mean there: E max(0, X − a) = mass · (mean − a). */
export interface UpperPart {
  readonly a: number;
  readonly mass: number;
  readonly mean: number;
}

// Origin: recomputed with mpmath 1.3, adaptive quadrature at 30 to 60 digits. The bound 0 by symmetry from the
// lower half.
export const upperParts: readonly UpperPart[] = [
  { a: 0, mass: 0.5, mean: 0.7978845608028654 },
  { a: 3, mass: 0.001349898031630095, mean: 3.283098654930437 },
  { a: 10, mass: 7.619853024160525e-24, mean: 10.09809323396251 },
  { a: 37, mass: 5.725571222524577e-300, mean: 37.02698768612699 },
];

/** P(x₁ < X < x₂, y₁ < Y < y₂) of two standard normal variables. */
export interface Rectangle {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly rho: number;
  readonly probability: number;
}

const INF = Number.POSITIVE_INFINITY;

// Origin: recomputed with mpmath 1.3, adaptive quadrature; R 4.2.2, package mvtnorm 1.1-3 (TVPACK), agrees
// to 1.1e-16.
export const rectangles: readonly Rectangle[] = [
  { x: [-INF, 1], y: [-1, INF], rho: 0.5, probability: 0.6864717942099402 },
  { x: [-1, 1], y: [-1, 1], rho: 0.5, probability: 0.497971777839208 },
  { x: [-1, 1], y: [-1, 1], rho: 0.95, probability: 0.6216390259432908 },
  { x: [0, 1], y: [0.5, 2], rho: 0.7, probability: 0.1341829674456543 },
  { x: [-2, 0.5], y: [1, 3], rho: -0.3, probability: 0.1234949079762876 },
  { x: [-0.1, 0.1], y: [-0.1, 0.1], rho: 0.99, probability: 0.03884421086638443 },
  { x: [1, 2], y: [-2, -1], rho: 0.8, probability: 5.614971929064137e-5 },
  { x: [-INF, -3], y: [-INF, -3], rho: 0.6, probability: 0.0001396552744597048 },
  { x: [-INF, -5], y: [-INF, -5], rho: 0.9, probability: 6.72190636743272e-8 },
  { x: [-INF, 1.2], y: [-0.7, 0.4], rho: 0.3, probability: 0.373034936608839 },
];

/** The same for three variables, with the correlations of 1 and 2, 1 and 3, 2 and 3. */
export interface Cuboid {
  readonly lower: readonly [number, number, number];
  readonly upper: readonly [number, number, number];
  readonly rho: readonly [number, number, number];
  readonly probability: number;
}

// Origin: recomputed with R 4.2.2, package mvtnorm 1.1-3, pmvnorm with algorithm TVPACK over the eight corners.
export const cuboids: readonly Cuboid[] = [
  { lower: [-1, -1, -1], upper: [1, 1, 1], rho: [0.5, 0.3, 0.2], probability: 0.348704759327625 },
  { lower: [-2, -0.5, 0], upper: [0.5, 1.5, 3], rho: [0.6, -0.3, 0.1], probability: 0.23749419340843 },
  { lower: [-INF, -1, 0.2], upper: [1, INF, 2], rho: [-0.4, 0.7, -0.2], probability: 0.238959088583718 },
  { lower: [-1, -1, -1], upper: [1, 1, 1], rho: [0.9, 0.8, 0.95], probability: 0.542894187227472 },
];

/** Standard normal variables Xᵢ = lᵢ F + √(1 − lᵢ²) Eᵢ with one factor F in common: correlations lᵢ lⱼ. */
export interface Box {
  readonly ranges: readonly (readonly [from: number, to: number])[];
  readonly loadings: readonly number[];
  readonly probability: number;
}

const NARROW: Box["ranges"] = [
  [-1, 1],
  [-0.3, 0.2],
  [0.1, 0.4],
  [-0.5, 1.5],
  [-2, 0.35],
];
const WIDE: Box["ranges"] = [
  [-4, 5],
  [-3, 4],
  [-2.5, 3],
  [-5, 1.5],
  [-1.2, 6],
];

/** Loadings that give all variables the same correlation. */
const all = (count: number, rho: number): readonly number[] =>
  Array.from({ length: count }, () => Math.sqrt(rho));

// Origin: recomputed with mpmath 1.2.1 at 20 to 30 digits: ∫ φ(t) Π [Φ((bᵢ − lᵢt)/√(1 − lᵢ²)) − Φ((aᵢ − lᵢt)/√(1 − lᵢ²))] dt over
// the common factor, in panels about every end.
export const boxes: readonly Box[] = [
  { ranges: NARROW.slice(0, 3), loadings: all(3, 0.5), probability: 0.01997519691304515 },
  { ranges: NARROW.slice(0, 4), loadings: all(4, 0.5), probability: 0.01438423197938642 },
  { ranges: NARROW.slice(0, 5), loadings: all(5, 0.5), probability: 0.00881548451166938 },
  { ranges: NARROW.slice(0, 3), loadings: all(3, 0.9), probability: 0.04109503057984179 },
  { ranges: NARROW.slice(0, 4), loadings: all(4, 0.9), probability: 0.03853669151967874 },
  { ranges: NARROW.slice(0, 5), loadings: all(5, 0.9), probability: 0.02802984194880758 },
  { ranges: NARROW.slice(0, 3), loadings: all(3, 0.99), probability: 0.04535959242880235 },
  { ranges: NARROW.slice(0, 4), loadings: all(4, 0.99), probability: 0.04535948831089547 },
  { ranges: NARROW.slice(0, 5), loadings: all(5, 0.99), probability: 0.0423472991228043 },
  { ranges: NARROW.slice(0, 3), loadings: all(3, 0.999), probability: 0.03950963861154336 },
  { ranges: NARROW.slice(0, 4), loadings: all(4, 0.999), probability: 0.03950963861154336 },
  { ranges: NARROW.slice(0, 5), loadings: all(5, 0.999), probability: 0.03950786170865059 },
  { ranges: NARROW.slice(0, 3), loadings: all(3, 0.9999), probability: 0.03943187216207463 },
  { ranges: NARROW.slice(0, 4), loadings: all(4, 0.9999), probability: 0.03943187216207463 },
  { ranges: NARROW.slice(0, 5), loadings: all(5, 0.9999), probability: 0.03943187216207463 },
  { ranges: WIDE.slice(0, 4), loadings: all(4, 0.3), probability: 0.9247626897272212 },
  { ranges: WIDE, loadings: all(5, 0.3), probability: 0.814557762112462 },
  { ranges: WIDE.slice(0, 4), loadings: all(4, 0.7), probability: 0.92596550026072 },
  { ranges: WIDE, loadings: all(5, 0.7), probability: 0.8169537031144543 },
  { ranges: WIDE.slice(0, 4), loadings: all(4, 0.95), probability: 0.9269174304738526 },
  { ranges: WIDE, loadings: all(5, 0.95), probability: 0.8181230302997103 },
  { ranges: NARROW.slice(0, 3), loadings: [0.995, 0.98, 0.6], probability: 0.02722192817679562 },
  { ranges: NARROW.slice(0, 4), loadings: [0.995, 0.98, 0.6, 0.999], probability: 0.02647842207821393 },
  {
    ranges: NARROW.slice(0, 5),
    loadings: [0.995, 0.98, 0.6, 0.999, -0.97],
    probability: 0.02234741644504528,
  },
];

/** Readings of somebody out of a population, and the intervals between the edges that the dimension then lies in. */
export interface Membership {
  readonly populationMeanMm: number;
  readonly populationSdMm: number;
  readonly readingSdMm: number;
  readonly count: number;
  readonly meanMm: number;
  readonly edges: readonly number[];
  readonly posteriorMeanMm: number;
  readonly posteriorSdMm: number;
  /** Below the first edge, between neighbouring edges, above the last. */
  readonly posterior: readonly number[];
  readonly flat: readonly number[];
}

// Origin: recomputed with mpmath 1.3, normal-normal conjugate posterior in the form of JCGM 106:2012, A.4, with the
// population as prior, and with a flat prior. Population figures in mm, invented or second-hand: only the
// arithmetic counts here.
export const memberships: readonly Membership[] = [
  {
    populationMeanMm: 940.6,
    populationSdMm: 111.7,
    readingSdMm: 10,
    count: 1,
    meanMm: 899,
    edges: [820, 860, 900, 940],
    posteriorMeanMm: 899.3307653958968,
    posteriorSdMm: 9.960165203210646,
    posterior: [
      8.27428159233705e-16, 0.0000392708981350622, 0.526745949870592, 0.473192568275494,
      0.0000222109557778817,
    ],
    flat: [
      1.39451714665927e-15, 0.0000480963440162082, 0.539779740933011, 0.460151505216058,
      0.0000206575069125467,
    ],
  },
  {
    populationMeanMm: 1019.5,
    populationSdMm: 76.7,
    readingSdMm: 12,
    count: 3,
    meanMm: 985,
    edges: [920, 960, 1000, 1040],
    posteriorMeanMm: 985.2792161041597,
    posteriorSdMm: 6.900110536817471,
    posterior: [
      1.53084162209624e-21, 0.000124349560706159, 0.983430210007075, 0.016445440432218, 1.09201799622205e-15,
    ],
    flat: [
      3.2384342839481e-21, 0.000154022352813873, 0.984654566658897, 0.0151914109882877, 1.02265872812817e-15,
    ],
  },
];
