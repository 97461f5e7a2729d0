/** Columns of right-hand sides solved at once. */
const COLUMNS = 5;
const BORDER = 3;
/** Of what is beside the diagonal. An eighth costs one decimal digit at most. */
const SMALL_PIVOT = 1 / 8;

/**
 * Newton step of a constrained smoothness problem: a symmetric tridiagonal matrix A (n x n) bordered by three columns B,
 *
 *   [ A  B ] [ x ]   [ f ]
 *   [ B' 0 ] [ y ] = [ g ]
 *
 * by block elimination in O(n). A may be singular (a pure slope penalty is: constants cost nothing), so the last diagonal
 * entry is raised and the change undone by a fourth border row. Where no pivot is small, A = L D L' gives the products
 * B' A^-1 B on the way down and only one column goes back up; an A with small pivots is solved with row exchanges.
 * Allocates once; `solve` overwrites its buffers.
 */
export class BorderedTridiagonal {
  /** Diagonal of A. */
  readonly diagonal: Float64Array;
  /** The one value beside the diagonal of A. */
  readonly beside: number;
  /** B, row by row: three numbers per row. */
  readonly border: Float64Array;
  readonly f: Float64Array;
  readonly g = new Float64Array(BORDER);
  /** Solutions. */
  readonly x: Float64Array;
  readonly y = new Float64Array(BORDER);

  private readonly size: number;
  private readonly upper1: Float64Array;
  private readonly upper2: Float64Array;
  private readonly pivot: Float64Array;
  private readonly rhs: Float64Array;
  private readonly small = new Float64Array(20);

  constructor(size: number, beside: number) {
    this.size = size;
    this.beside = beside;
    this.diagonal = new Float64Array(size);
    this.border = new Float64Array(size * BORDER);
    this.f = new Float64Array(size);
    this.x = new Float64Array(size);
    this.upper1 = new Float64Array(size);
    this.upper2 = new Float64Array(size);
    this.pivot = new Float64Array(size);
    this.rhs = new Float64Array(size * COLUMNS);
  }

  /** Solves for x and y; false when the system is singular to working precision. */
  solve(): boolean {
    return this.solveWithoutExchange() ?? this.solveWithExchanges();
  }

  /** Null when a pivot is small beside what is off the diagonal. */
  private solveWithoutExchange(): boolean | null {
    const { size, border, f, g, rhs, small, diagonal, beside, pivot, x } = this;
    const raise = Math.abs(beside);
    const least = SMALL_PIVOT * raise;
    // The row above after elimination: f and the border columns.
    let [rf, r0, r1, r2] = [0, 0, 0, 0];
    let factor = 0;
    let inverse = 0;
    // Products of the eliminated columns over the pivots: B' A^-1 f and B' A^-1 B.
    let [f0, f1, f2, b00, b01, b02, b11, b12, b22] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
    for (let i = 0; i < size; i++) {
      const q = diagonal[i]! + (i === size - 1 ? raise : 0) - factor * beside;
      if (!(Math.abs(q) >= least)) return null;
      rf = f[i]! - factor * rf;
      r0 = border[3 * i]! - factor * r0;
      r1 = border[3 * i + 1]! - factor * r1;
      r2 = border[3 * i + 2]! - factor * r2;
      const at = i * COLUMNS;
      rhs[at] = rf;
      rhs[at + 1] = r0;
      rhs[at + 2] = r1;
      rhs[at + 3] = r2;
      inverse = 1 / q;
      pivot[i] = inverse;
      factor = beside * inverse;
      const [s0, s1, s2] = [r0 * inverse, r1 * inverse, r2 * inverse];
      f0 += rf * s0;
      f1 += rf * s1;
      f2 += rf * s2;
      b00 += r0 * s0;
      b01 += r0 * s1;
      b02 += r0 * s2;
      b11 += r1 * s1;
      b12 += r1 * s2;
      b22 += r2 * s2;
    }
    // The raised entry is the last, so its column has nothing but the last pivot in it.
    const [e0, e1, e2] = [r0 * inverse, r1 * inverse, r2 * inverse];
    setRow(small, 0, b00, b01, b02, -raise * e0, f0 - g[0]!);
    setRow(small, 1, b01, b11, b12, -raise * e1, f1 - g[1]!);
    setRow(small, 2, b02, b12, b22, -raise * e2, f2 - g[2]!);
    setRow(small, 3, e0, e1, e2, 1 - raise * inverse, rf * inverse);
    if (!solveFour(small)) return false;

    const [y0, y1, y2] = [small[4]!, small[9]!, small[14]!];
    this.y[0] = y0;
    this.y[1] = y1;
    this.y[2] = y2;
    let right = raise * small[19]!;
    let below = 0;
    for (let i = size - 1; i >= 0; i--) {
      const at = i * COLUMNS;
      right += rhs[at]! - rhs[at + 1]! * y0 - rhs[at + 2]! * y1 - rhs[at + 3]! * y2;
      below = (right - beside * below) * pivot[i]!;
      x[i] = below;
      right = 0;
    }
    return true;
  }

  private solveWithExchanges(): boolean {
    const { size, border, f, g, rhs, small } = this;
    const raise = Math.abs(this.beside);
    for (let i = 0; i < size; i++) {
      rhs[i * COLUMNS] = f[i]!;
      rhs[i * COLUMNS + 1] = border[i * BORDER]!;
      rhs[i * COLUMNS + 2] = border[i * BORDER + 1]!;
      rhs[i * COLUMNS + 3] = border[i * BORDER + 2]!;
      rhs[i * COLUMNS + 4] = i === size - 1 ? 1 : 0;
    }
    if (!this.eliminate(raise)) return false;

    // Unknowns of the small system: y (3) and the last x. Each row: 4 coefficients and the right-hand side.
    small.fill(0);
    for (let r = 0; r < BORDER; r++) {
      let dotF = 0;
      let dotRaised = 0;
      for (let i = 0; i < size; i++) {
        const weight = border[i * BORDER + r]!;
        const at = i * COLUMNS;
        dotF += weight * rhs[at]!;
        small[r * 5] = small[r * 5]! + weight * rhs[at + 1]!;
        small[r * 5 + 1] = small[r * 5 + 1]! + weight * rhs[at + 2]!;
        small[r * 5 + 2] = small[r * 5 + 2]! + weight * rhs[at + 3]!;
        dotRaised += weight * rhs[at + 4]!;
      }
      small[r * 5 + 3] = -raise * dotRaised;
      small[r * 5 + 4] = dotF - g[r]!;
    }
    const at = (size - 1) * COLUMNS;
    small[15] = rhs[at + 1]!;
    small[16] = rhs[at + 2]!;
    small[17] = rhs[at + 3]!;
    small[18] = 1 - raise * rhs[at + 4]!;
    small[19] = rhs[at]!;
    if (!solveFour(small)) return false;

    const [y0, y1, y2, lifted] = [small[4]!, small[9]!, small[14]!, small[19]! * raise];
    this.y[0] = y0;
    this.y[1] = y1;
    this.y[2] = y2;
    for (let i = 0; i < size; i++) {
      const row = i * COLUMNS;
      this.x[i] = rhs[row]! - rhs[row + 1]! * y0 - rhs[row + 2]! * y1 - rhs[row + 3]! * y2 + rhs[row + 4]! * lifted;
    }
    return true;
  }

  /** Gaussian elimination with row exchanges (one extra upper diagonal), then back substitution of all columns. */
  private eliminate(raise: number): boolean {
    const { size, diagonal, beside, upper1, upper2, pivot, rhs } = this;
    pivot.set(diagonal);
    pivot[size - 1] = pivot[size - 1]! + raise;
    upper1.fill(beside);
    upper1[size - 1] = 0;
    upper2.fill(0);
    for (let i = 0; i < size - 1; i++) {
      const here = i * COLUMNS;
      const next = here + COLUMNS;
      if (Math.abs(pivot[i]!) >= Math.abs(beside)) {
        const factor = beside / pivot[i]!;
        pivot[i + 1] = pivot[i + 1]! - factor * upper1[i]!;
        for (let c = 0; c < COLUMNS; c++) rhs[next + c] = rhs[next + c]! - factor * rhs[here + c]!;
      } else {
        const factor = pivot[i]! / beside;
        const diagonalBelow = pivot[i + 1]!;
        pivot[i] = beside;
        pivot[i + 1] = upper1[i]! - factor * diagonalBelow;
        upper1[i] = diagonalBelow;
        upper2[i] = upper1[i + 1]!;
        upper1[i + 1] = -factor * upper1[i + 1]!;
        for (let c = 0; c < COLUMNS; c++) {
          const kept = rhs[here + c]!;
          rhs[here + c] = rhs[next + c]!;
          rhs[next + c] = kept - factor * rhs[next + c]!;
        }
      }
    }
    if (pivot[size - 1] === 0) return false;
    for (let i = size - 1; i >= 0; i--) {
      const row = i * COLUMNS;
      const scale = 1 / pivot[i]!;
      for (let c = 0; c < COLUMNS; c++) {
        let value = rhs[row + c]!;
        if (i + 1 < size) value -= upper1[i]! * rhs[row + COLUMNS + c]!;
        if (i + 2 < size) value -= upper2[i]! * rhs[row + 2 * COLUMNS + c]!;
        rhs[row + c] = value * scale;
      }
    }
    return true;
  }
}

function setRow(m: Float64Array, row: number, a: number, b: number, c: number, d: number, right: number): void {
  m[5 * row] = a;
  m[5 * row + 1] = b;
  m[5 * row + 2] = c;
  m[5 * row + 3] = d;
  m[5 * row + 4] = right;
}

/** Four equations in place, rows of five (coefficients, right-hand side); the solution replaces the right-hand sides. */
function solveFour(m: Float64Array): boolean {
  for (let column = 0; column < 4; column++) {
    let best = column;
    for (let row = column + 1; row < 4; row++) {
      if (Math.abs(m[row * 5 + column]!) > Math.abs(m[best * 5 + column]!)) best = row;
    }
    const pivot = m[best * 5 + column]!;
    if (pivot === 0 || !Number.isFinite(pivot)) return false;
    for (let k = 0; k < 5; k++) {
      const kept = m[column * 5 + k]!;
      m[column * 5 + k] = m[best * 5 + k]! / pivot;
      if (best !== column) m[best * 5 + k] = kept;
    }
    for (let row = 0; row < 4; row++) {
      const factor = m[row * 5 + column]!;
      if (row === column || factor === 0) continue;
      for (let k = column; k < 5; k++) m[row * 5 + k] = m[row * 5 + k]! - factor * m[column * 5 + k]!;
    }
  }
  return true;
}
