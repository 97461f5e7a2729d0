import { createContext } from 'react';

/** True where customers use the page: parts that bring files in, or leave something behind, are not there. */
export const Locked = createContext(false);
