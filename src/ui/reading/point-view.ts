import type { PointReading } from '../../kitchen/study/point-reading';

/** The color and light at one chosen point, as the reading card shows it. */
export type PointView = Omit<PointReading, 'surface'>;
