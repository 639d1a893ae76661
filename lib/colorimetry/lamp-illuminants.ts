/**
 * Relative spectral power of two illuminants of CIE 015 that stand for lamps in the shops,
 * at 5 nm: LED-B3, a white LED of a blue diode and phosphors (4,103 K), and FL11, a
 * three-band fluorescent tube (4,000 K).
 *
 * The figures are those of `colour/colorimetry/datasets/illuminants/sds.py` of the Python
 * package colour-science. Its licence, BSD-3-Clause:
 *
 * Copyright 2013 Colour Developers
 *
 * Redistribution and use in source and binary forms, with or without modification, are
 * permitted provided that the following conditions are met:
 *
 * 1. Redistributions of source code must retain the above copyright notice, this list of
 * conditions and the following disclaimer.
 *
 * 2. Redistributions in binary form must reproduce the above copyright notice, this list of
 * conditions and the following disclaimer in the documentation and/or other materials
 * provided with the distribution.
 *
 * 3. Neither the name of the copyright holder nor the names of its contributors may be used
 * to endorse or promote products derived from this software without specific prior written
 * permission.
 *
 * THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS" AND ANY EXPRESS
 * OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF
 * MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL THE
 * COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL,
 * EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF
 * SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION)
 * HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR
 * TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS
 * SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
 *
 * @source cie-15-2018, colour-science
 */

/** One row: wavelength [nm], then LED-B3 and FL11 [1]. */
export type LampRow = readonly [nm: number, led: number, fluorescent: number];

export const LAMP_ILLUMINANTS: readonly LampRow[] = [
  [380, 0, 0.91],
  [385, 0, 0.63],
  [390, 0.01, 0.46],
  [395, 0.02, 0.37],
  [400, 0.05, 1.29],
  [405, 0.11, 12.68],
  [410, 0.25, 1.59],
  [415, 0.56, 1.79],
  [420, 1.2, 2.46],
  [425, 2.37, 3.33],
  [430, 4.24, 4.49],
  [435, 7.17, 33.94],
  [440, 12.11, 12.13],
  [445, 17.7, 6.95],
  [450, 18.87, 7.19],
  [455, 14.58, 7.12],
  [460, 9.9, 6.72],
  [465, 7.53, 6.13],
  [470, 6.02, 5.46],
  [475, 5.11, 4.79],
  [480, 5.17, 5.66],
  [485, 5.82, 14.29],
  [490, 6.77, 14.96],
  [495, 7.88, 8.97],
  [500, 8.94, 4.72],
  [505, 9.82, 2.33],
  [510, 10.52, 1.47],
  [515, 11.06, 1.1],
  [520, 11.51, 0.89],
  [525, 11.93, 0.83],
  [530, 12.37, 1.18],
  [535, 12.83, 4.9],
  [540, 13.31, 39.59],
  [545, 13.79, 72.84],
  [550, 14.26, 32.61],
  [555, 14.68, 7.52],
  [560, 15.08, 2.83],
  [565, 15.42, 1.96],
  [570, 15.72, 1.67],
  [575, 15.97, 4.43],
  [580, 16.18, 11.28],
  [585, 16.37, 14.76],
  [590, 16.5, 12.73],
  [595, 16.55, 9.74],
  [600, 16.5, 7.33],
  [605, 16.32, 9.72],
  [610, 16, 55.27],
  [615, 15.54, 42.58],
  [620, 14.96, 13.18],
  [625, 14.27, 13.16],
  [630, 13.48, 12.26],
  [635, 12.62, 5.11],
  [640, 11.71, 2.07],
  [645, 10.78, 2.34],
  [650, 9.85, 3.58],
  [655, 8.93, 3.01],
  [660, 8.04, 2.48],
  [665, 7.2, 2.14],
  [670, 6.42, 1.54],
  [675, 5.69, 1.33],
  [680, 5.02, 1.46],
  [685, 4.42, 1.94],
  [690, 3.88, 2],
  [695, 3.39, 1.2],
  [700, 2.95, 1.35],
  [705, 2.56, 4.1],
  [710, 2.22, 5.58],
  [715, 1.92, 2.51],
  [720, 1.65, 0.57],
  [725, 1.43, 0.27],
  [730, 1.23, 0.23],
  [735, 1.06, 0.21],
  [740, 0.91, 0.24],
  [745, 0.78, 0.24],
  [750, 0.68, 0.2],
  [755, 0.58, 0.24],
  [760, 0.5, 0.32],
  [765, 0.43, 0.26],
  [770, 0.37, 0.16],
  [775, 0.32, 0.12],
  [780, 0.28, 0.09],
];
