export { pointing } from '../parts/pointing';
