import type { LightReport } from '../kitchen/study/light-report';

/** The light report in the fields of the command's JSON, where the surface a tint comes from is called its source. */
export const lightRecord = (report: LightReport) => ({
  ...report,
  surfaces: report.surfaces.map((surface) => ({
    ...surface,
    from: surface.from.map(({ surface: source, share }) => ({ source, share })),
  })),
});

export type LightRecord = ReturnType<typeof lightRecord>;
