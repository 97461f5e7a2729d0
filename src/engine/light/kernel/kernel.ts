import type { KernelName, LightKernel } from './types';
import { typescriptKernel } from './typescript-kernel';
import { createWasmKernel, type WasmKernel } from './wasm-kernel';

let wasm: WasmKernel | null | undefined;
let forced: LightKernel | null = null;

/** The kernel for this machine: WebAssembly where it runs, else TypeScript. Made on first use. */
export function lightKernel(): LightKernel {
  return forced ?? wasmKernel() ?? typescriptKernel;
}

/** The one in WebAssembly; null where it cannot run. */
function wasmKernel(): WasmKernel | null {
  if (wasm === undefined) wasm = createWasmKernel();
  return wasm;
}

/** Does `work` on one kernel whatever the machine would choose. Throws where there is no WebAssembly with SIMD. */
export function withKernel<T>(name: KernelName, work: () => T): T {
  const chosen = name === 'typescript' ? typescriptKernel : wasmKernel();
  if (!chosen) throw new Error('There is no WebAssembly with SIMD here.');
  const before = forced;
  forced = chosen;
  try {
    return work();
  } finally {
    forced = before;
  }
}
