// Fields of pieces: which of the texture's pieces a place shows. The twin of src/engine/pattern/place.ts.
// PIECES: 0 = in rows, 1 = herringbone, 2 = hexagons.
uniform vec2 pieceModule;
uniform ivec2 pieceCount;
uniform uint pieceSeed;
uniform float rowOffsets[32];
uniform int rowCycle;

// Number of the piece (x, y), and the place from its middle along and across it.
void rowPiece(vec2 at, out ivec2 number, out vec2 local) {
  float j = floor(at.y / pieceModule.y);
  float cycle = float(rowCycle);
  float q = at.x / pieceModule.x - rowOffsets[int(j - cycle * floor(j / cycle) + 0.5)];
  float i = floor(q);
  number = ivec2(int(i), int(j));
  local = vec2((q - i - 0.5) * pieceModule.x, at.y - (j + 0.5) * pieceModule.y);
}

bool herringbonePiece(vec2 at, out ivec2 number, out vec2 local) {
  float l = pieceModule.x;
  float w = pieceModule.y;
  float m = floor((at.x - at.y + w) / (2.0 * l));
  float k = floor((at.y + m * l) / w);
  float u = at.x - k * w - m * l;
  if (u >= 0.0 && u < l) {
    number = ivec2(2 * int(k), int(m));
    local = vec2(u - 0.5 * l, at.y + m * l - (k + 0.5) * w);
    return false;
  }
  float n = floor((at.x - at.y - l + w) / (2.0 * l));
  float h = floor((at.x - l - n * l) / w);
  number = ivec2(2 * int(h) + 1, int(n));
  local = vec2(at.y - w + l - h * w + n * l - 0.5 * l, at.x - l - n * l - (h + 0.5) * w);
  return true;
}

void hexagonPiece(vec2 at, out ivec2 number, out vec2 local) {
  float best = 1e30;
  float low = floor(at.y / pieceModule.y);
  for (float j = low; j <= low + 1.0; j += 1.0) {
    float shift = (int(j) & 1) == 0 ? 0.0 : 0.5;
    float i = floor(at.x / pieceModule.x - shift + 0.5);
    vec2 from = at - vec2((i + shift) * pieceModule.x, j * pieceModule.y);
    float distance2 = dot(from, from);
    if (distance2 >= best) continue;
    best = distance2;
    number = ivec2(int(i), int(j));
    local = from;
  }
}

uint hashPiece(ivec2 number) {
  uint h = (uint(number.x) * 0x27d4eb2du) ^ (uint(number.y) * 0x165667b1u) ^ pieceSeed;
  h = (h ^ (h >> 15)) * 0x85ebca6bu;
  h = (h ^ (h >> 13)) * 0xc2b2ae35u;
  return h ^ (h >> 16);
}

// The bytes of a field of pieces at a place in m. Mip levels follow the field itself, which has no jumps.
vec4 piecesAt(sampler2D pieces, vec2 at, vec2 period) {
  vec2 dx = dFdx(at);
  vec2 dy = dFdy(at);
  ivec2 number = ivec2(0);
  vec2 local = vec2(0.0);
#if PIECES == 0
  rowPiece(at, number, local);
#elif PIECES == 1
  if (herringbonePiece(at, number, local)) {
    dx = dx.yx;
    dy = dy.yx;
  }
#else
  hexagonPiece(at, number, local);
#endif
  uint hash = hashPiece(number);
  int piece = int(hash % uint(pieceCount.x * pieceCount.y));
  int row = piece / pieceCount.x;
  vec2 cell = vec2(float(piece - row * pieceCount.x), float(row));
#if PIECES == 2
  cell += vec2(0.5 * float(row & 1), 0.0);
#else
  cell += vec2(0.5);
#endif
  vec2 place = cell * pieceModule + ((hash >> 31) == 1u ? -local : local);
  return textureGrad(pieces, place / period, dx / period, dy / period);
}
