/** An inch is 25.4 mm exactly. */
const MM_PER_INCH = 25.4;

/** Millimetres of a unit as people write it. */
const UNITS: readonly (readonly [RegExp, number])[] = [
  [/^(?:mm|millim\w*)$/, 1],
  [/^(?:cm|centim\w*|zentim\w*)$/, 10],
  [/^(?:m|met\w*|metros?|metri)$/, 1000],
  [/^(?:in|inch(?:es)?|''|"|″|”|zoll|pouces?|pulgadas?|pollic[ei])$/, MM_PER_INCH],
  [/^(?:ft|feet|foot|'|′|fuss|pieds?|pies?|piedi)$/, 304.8],
];

/** Without a unit, both sides from here on are millimetres; less may be centimetres or inches. */
const SURELY_MM = 200;

const NUMBER = String.raw`(\d+(?:[.,]\d+)?(?:[\s-]+\d+\/\d+)?|\d+\/\d+)`;
const UNIT = `([a-z]+|''|["″”'′])?`;
const CROSS = String.raw`\s*(?:x|×|\*|by|auf|par|por|per)\s*`;
const SIZE = new RegExp(
  String.raw`^${NUMBER}\s*${UNIT}${CROSS}${NUMBER}\s*${UNIT}(?:${CROSS}${NUMBER}\s*${UNIT})?\.?$`,
  'i',
);
const SINGLE = new RegExp(String.raw`^${NUMBER}\s*${UNIT}\.?$`, 'i');

/**
 * Width and length of a piece in one cell, with its thickness where that is given, mm: "300 x 600 mm", "12x24 in", "7 1/2\" x 48\" x 3/8\"";
 * null where it says none.
 */
export function sizeInCell(cell: string, heading: string): readonly [number, number, number?] | null {
  const found = SIZE.exec(cell.trim());
  if (!found) return null;
  const [, first, firstUnit, second, secondUnit, third, thirdUnit] = found;
  const said = unitMm(secondUnit) ?? unitMm(thirdUnit) ?? unitOfHeading(heading);
  const lengths = [amountOf(first!), amountOf(second!)] as const;
  const isBare = !firstUnit && !secondUnit && !thirdUnit && said === null;
  if (isBare && lengths.some((length) => length < SURELY_MM)) return null;
  const a = unitMm(firstUnit) ?? said ?? 1;
  const b = said ?? unitMm(firstUnit) ?? 1;
  const c = unitMm(thirdUnit) ?? unitMm(secondUnit) ?? unitMm(firstUnit) ?? said ?? 1;
  const sides = [rounded(lengths[0] * a), rounded(lengths[1] * b)] as const;
  // "2/3 cm" is one of two thicknesses; rulers in inches have fractions.
  return third === undefined || (third.includes('/') && c < MM_PER_INCH)
    ? sides
    : [...sides, rounded(amountOf(third) * c)];
}

/** One length in a cell, mm; without a unit in the unit of the heading, else mm. Null where it says none. */
export function lengthInCell(cell: string, heading: string): number | null {
  const found = SINGLE.exec(cell.trim());
  if (!found) return null;
  const [, digits, unit] = found;
  const mm = unit ? unitMm(unit) : (unitOfHeading(heading) ?? 1);
  return mm === null ? null : rounded(amountOf(digits!) * mm);
}

/** The thickness in a cell, mm, as `lengthInCell`; a fraction of anything but inches and feet says none ("2/3 cm" is either of two). */
export function thicknessInCell(cell: string, heading: string): number | null {
  const [, digits = '', unit] = SINGLE.exec(cell.trim()) ?? [];
  const mm = unit ? unitMm(unit) : (unitOfHeading(heading) ?? 1);
  return digits.includes('/') && (mm ?? 0) < MM_PER_INCH ? null : lengthInCell(cell, heading);
}

/** "Width (in)", "size_cm", "Breite mm": the unit in a heading; null where it has none. */
function unitOfHeading(heading: string): number | null {
  const words = heading.toLowerCase().split(/[^a-z"″']+/);
  return (
    words
      .slice(1)
      .map(unitMm)
      .findLast((mm) => mm !== null) ?? null
  );
}

const unitMm = (unit: string | undefined): number | null =>
  UNITS.find(([words]) => words.test(unit?.toLowerCase() ?? ''))?.[1] ?? null;

/** "7", "7.5", "7 1/2", "3/4". */
function amountOf(digits: string): number {
  return digits
    .split(/[\s-]+/)
    .map((part) => {
      const [over, under] = part.replace(',', '.').split('/').map(Number);
      return under === undefined ? over! : over! / under;
    })
    .reduce((sum, one) => sum + one, 0);
}

/** Inches come out exact to the thousandth of a millimetre. */
const rounded = (mm: number): number => Number(mm.toFixed(3));
