import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { brushTaps } from '../../../src/engine/sheen/brush-taps';
import { bodyOf, mirrorOf, sheenOfFinish, splitSheen } from '../../../src/engine/sheen/sheen';
import { sheenOfLook } from '../../../src/view/sheen';
import { lab } from './lab';

// The picture's shader against the engine's formulas: same body, same mirrored light, every angle.

const COSINES = 64;
const BODY = [0.31, 0.42, 0.53] as const;
const MIRRORED = [1.7, 0.9, 0.4] as const;

const shaderPart = (name: string) => readFileSync(new URL(`../../../shaders/${name}.glsl`, import.meta.url), 'utf8');

/** bodyAndMirror of the shader for cosines (i + 0.5) / COSINES. */
const partedByShader = (metal: boolean, uniforms: Readonly<Record<string, readonly number[]>>, gain = 1) =>
  byShader(
    `#define SHEEN ${metal ? 2 : 1}
${shaderPart('sheen')}
uniform vec3 body;
uniform vec3 mirrored;
out vec4 fragColor;
void main() {
  fragColor = vec4(bodyAndMirror(body * bodyGain[0], mirrored, gl_FragCoord.x / ${COSINES}.0, float(${gain})), 1.0);
}`,
    uniforms,
  );

/** Colors of a row of COSINES pixels, RGBA. */
function byShader(main: string, uniforms: Readonly<Record<string, readonly number[]>>): Promise<number[]> {
  const fragment = `#version 300 es
precision highp float;
${main}`;
  return lab.page.evaluate(
    ({ source, values, width }) => {
      const gl = document.createElement('canvas').getContext('webgl2')!;
      gl.getExtension('EXT_color_buffer_float');
      const program = gl.createProgram()!;
      const vertex = `#version 300 es
void main() { gl_Position = vec4(vec2[](vec2(-1, -1), vec2(3, -1), vec2(-1, 3))[gl_VertexID], 0, 1); }`;
      for (const [type, text] of [
        [gl.VERTEX_SHADER, vertex],
        [gl.FRAGMENT_SHADER, source],
      ] as const) {
        const made = gl.createShader(type)!;
        gl.shaderSource(made, text);
        gl.compileShader(made);
        if (!gl.getShaderParameter(made, gl.COMPILE_STATUS)) throw new Error(gl.getShaderInfoLog(made) ?? 'shader');
        gl.attachShader(program, made);
      }
      gl.linkProgram(program);
      gl.useProgram(program);
      for (const [name, value] of Object.entries(values)) {
        const place = gl.getUniformLocation(program, name);
        if (name === 'mirrorPart' || name === 'mirrorAlbedo') gl.uniform1fv(place, value);
        else if (name === 'brushWidths') gl.uniform2fv(place, value);
        else gl.uniform3fv(place, value);
      }
      gl.bindFramebuffer(gl.FRAMEBUFFER, gl.createFramebuffer());
      const texture = gl.createTexture();
      gl.bindTexture(gl.TEXTURE_2D, texture);
      gl.texStorage2D(gl.TEXTURE_2D, 1, gl.RGBA32F, width, 1);
      gl.framebufferTexture2D(gl.FRAMEBUFFER, gl.COLOR_ATTACHMENT0, gl.TEXTURE_2D, texture, 0);
      gl.viewport(0, 0, width, 1);
      gl.drawArrays(gl.TRIANGLES, 0, 3);
      const out = new Float32Array(4 * width);
      gl.readPixels(0, 0, width, 1, gl.RGBA, gl.FLOAT, out);
      return Array.from(out);
    },
    { source: fragment, values: uniforms, width: COSINES },
  );
}

it.each([
  ['a satin paint', 25, false, [0.6, 0.55, 0.4]],
  ['a polished black', 85, false, [0.05, 0.045, 0.05]],
  ['a finish that has hardly a sheen', 7, false, [0.3, 0.3, 0.3]],
  ['brushed brass', 60, true, [0.75, 0.6, 0.35]],
] as const)('parts %s as the engine does', async (_, glossGu, metal, color) => {
  const sheenUniforms = sheenOfLook({ glossGu, metal, flat: [color] })!;
  const { mirrorAlbedo, bodyGain, mirrorPart, mirrorTint } = sheenUniforms;
  const seen = await partedByShader(metal, {
    mirrorPart: [mirrorPart],
    mirrorTint,
    mirrorAlbedo: Array.from(mirrorAlbedo),
    bodyGain: Array.from(bodyGain),
    body: BODY,
    mirrored: MIRRORED,
  });
  const y = 0.2126 * color[0] + 0.7152 * color[1] + 0.0722 * color[2];
  const sheen = sheenOfFinish(glossGu, y, metal)!;
  for (let i = 0; i < COSINES; i++) {
    const split = splitSheen(sheen, (i + 0.5) / COSINES);
    for (let k = 0; k < 3; k++) {
      // What the finish sends back without sheen is BODY: its reflectance times the light there.
      const expected = (bodyOf(split, color[k]!) / color[k]!) * BODY[k]! + mirrorOf(split, color[k]!) * MIRRORED[k]!;
      // Single precision on the graphics card.
      expect(Math.abs(seen[4 * i + k]! - expected)).toBeLessThan(2e-6);
    }
  }
});

it('has no sheen for a matt finish, and a wider cone the rougher', () => {
  const flat = [[0.5, 0.5, 0.5]] as const;
  expect(sheenOfLook({ glossGu: 4, metal: false, flat })).toBeNull();
  const [satin, polished] = [25, 85].map((glossGu) => sheenOfLook({ glossGu, metal: false, flat })!);
  expect(satin!.cone).toBeGreaterThan(5 * polished!.cone);
});

it('leaves the grout between glossy tiles as it is: its whole color, and no mirror', () => {
  const flat = [
    [0.8, 0.8, 0.8],
    [0.5, 0.5, 0.5],
  ] as const;
  const { bodyGain, jointMask } = sheenOfLook({ glossGu: 85, metal: false, joint: 1, flat })!;
  expect(Array.from(bodyGain.slice(3, 6))).toEqual([1, 1, 1]);
  expect(bodyGain[0]).toBeLessThan(1);
  expect(jointMask).toEqual([1, 0, 0]);
  expect(sheenOfLook({ glossGu: 85, metal: false, joint: -1, flat })!.jointMask).toEqual([0, 0, 0]);
});

it('looks up in a brushed metal where the engine does, with its weights', async () => {
  const widths = sheenOfLook({ glossGu: 50, metal: true, brushed: true, flat: [[0.47, 0.47, 0.46]] })!.brushWidths!;
  // The place, line and normal of a face turned in the room, an eye that goes from straight on to grazing.
  const normal = [0.36, -0.48, 0.8] as const;
  const line = [0.8, 0.6, 0] as const;
  const across = [normal[1] * 0 - normal[2] * 0.6, normal[2] * 0.8 - normal[0] * 0, normal[0] * 0.6 - normal[1] * 0.8];
  for (const turn of [0.2, 1.5, 3.9]) {
    const seen = await byShader(
      `vec3 cubeLight(vec3 place, vec3 direction, float cone) {
  return vec3(1.0 + 0.5 * direction.x - 0.3 * direction.z, 1.0 + direction.y * direction.x, min(cone, 1.0));
}
${shaderPart('brushed')}
out vec4 fragColor;
void main() {
  float z = gl_FragCoord.x / ${COSINES}.0;
  vec3 normal = vec3(${normal.join()});
  vec3 line = vec3(${line.map((x) => x.toFixed(1)).join()});
  vec3 eye = sqrt(1.0 - z * z) * (${Math.cos(turn)} * line + float(${Math.sin(turn)}) * cross(normal, line)) + z * normal;
  fragColor = vec4(brushedLight(vec3(0.0), eye, normal, line), 1.0);
}`,
      { brushWidths: widths },
    );
    for (let i = 0; i < COSINES; i++) {
      const z = (i + 0.5) / COSINES;
      const sine = Math.sqrt(1 - z * z);
      const expected = [0, 0, 0];
      for (const { direction, weight, cone } of brushTaps(widths, [sine * Math.cos(turn), sine * Math.sin(turn), z])) {
        const [x, y, up] = [0, 1, 2].map(
          (k) => direction[0] * line[k]! + direction[1] * across[k]! + direction[2] * normal[k]!,
        ) as [number, number, number];
        expected[0]! += weight * (1 + 0.5 * x - 0.3 * up);
        expected[1]! += weight * (1 + y * x);
        expected[2]! += weight * Math.min(cone, 1);
      }
      // A tenth of the least step of a screen: single precision through slopes and roots.
      expected.forEach((value, k) => {
        expect(Math.abs(seen[4 * i + k]! - value)).toBeLessThan(0.1 / 255);
      });
    }
  }
});

it('shows the streaks of a metal in its mirror, and those of a coat in its body alone', async () => {
  const streaked = async (metal: boolean) => {
    const { mirrorAlbedo, bodyGain, mirrorPart, mirrorTint } = sheenOfLook({
      glossGu: 60,
      metal,
      flat: [[0.5, 0.5, 0.5]],
    })!;
    const uniforms = {
      mirrorPart: [mirrorPart],
      mirrorTint,
      mirrorAlbedo: [...mirrorAlbedo],
      bodyGain: [...bodyGain],
      body: BODY,
      mirrored: MIRRORED,
    };
    const [plain, gained] = [await partedByShader(metal, uniforms), await partedByShader(metal, uniforms, 1.1)];
    // Nearly straight on.
    const at = 4 * (COSINES - 1);
    return gained[at]! / plain[at]!;
  };
  expect(await streaked(true)).toBeCloseTo(1.1, 3);
  expect(await streaked(false)).toBeCloseTo(1, 6);
});
