import { expect, it } from 'vitest';
import { inUnit } from '../../src/model/unit-words';

// The caution on cooktops read "30 in (30 in) from the cooktop" where inches are chosen.
it('what says inches first and millimeters in brackets says inches once', () => {
  expect(inUnit('ask for 30 in (762 mm) to cabinets, 24 in (610 mm) to protected ones', 'in')).toBe(
    'ask for 30 in to cabinets, 24 in to protected ones',
  );
  expect(inUnit('ask for 30 in (762 mm)', 'mm')).toBe('ask for 30 in (762 mm)');
});

// Quantities of paint and grout stayed in liters where inches are chosen.
it('liters, and what is told by the liter, turn to gallons', () => {
  // 1 gal = 3.785411784 L, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg (NIST SP 811): 10 m2/L are 407 ft2/gal, 1.6 kg/L 13.4 lb/gal.
  expect(inUnit('5.05 L net, 10 m² per liter, 1.6 kg per liter', 'in')).toBe(
    '1.3 gal net, 407 sq ft per gallon, 13 lb per gallon',
  );
  expect(inUnit('L* 88, a* 1', 'in')).toBe('L* 88, a* 1');
});
