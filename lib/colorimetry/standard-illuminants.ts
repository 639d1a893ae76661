/**
 * Relative spectral power of CIE illuminants at 10 nm: A, C, D50, D65.
 *
 * The figures are those of `spectral_constants.py` in python-colormath 3.0.0, as
 * packaged by Debian (python3-colormath), rows outside 360-780 nm left out.
 * Its licence, BSD-3-Clause:
 *
 * Copyright: 2008-2018, Gregory Taylor
 *
 * Redistribution and use in source and binary forms, with or without
 * modification, are permitted provided that the following conditions are met:
 *
 * Redistributions of source code must retain the above copyright notice, this
 * list of conditions and the following disclaimer.
 *
 * Redistributions in binary form must reproduce the above copyright notice, this
 * list of conditions and the following disclaimer in the documentation and/or
 * other materials provided with the distribution.
 *
 * Neither the name of the <ORGANIZATION> nor the names of its contributors may
 * be used to endorse or promote products derived from this software without
 * specific prior written permission.
 *
 * THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS"
 * AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
 * IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
 * DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE
 * FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL
 * DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR
 * SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER
 * CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY,
 * OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
 * OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
 *
 * Two traps of that table, checked against CIE 15:2004 at 5 nm: its C reads zero
 * from 780 nm, so C ends at 770 nm here ({@link ILLUMINANT_END_NM}); its D50 and
 * D65 drift from the printed 5 nm figures below 380 nm, so integration starts there.
 *
 * @source cie-15-2004, python-colormath
 */

/** One row: wavelength [nm], then A, C, D50 and D65, each 100 near 560 nm [1]. */
export type IlluminantRow = readonly [nm: number, A: number, C: number, D50: number, D65: number];

/** Last wavelength [nm] at which the table of each illuminant can be used. */
export const ILLUMINANT_END_NM = { A: 780, C: 770, D50: 780, D65: 780 } as const;

export const STANDARD_ILLUMINANTS: readonly IlluminantRow[] = [
  [360, 6.15, 12.9, 23.91, 46.59],
  [370, 7.83, 21.4, 25.89, 51.74],
  [380, 9.8, 33, 24.45, 49.92],
  [390, 12.09, 47.4, 29.83, 54.6],
  [400, 14.72, 63.3, 49.25, 82.69],
  [410, 17.69, 80.6, 56.45, 91.42],
  [420, 21.01, 98.1, 59.97, 93.37],
  [430, 24.68, 112.4, 57.76, 86.63],
  [440, 28.71, 121.5, 74.77, 104.81],
  [450, 33.1, 124, 87.19, 116.96],
  [460, 37.82, 123.1, 90.56, 117.76],
  [470, 42.88, 123.8, 91.32, 114.82],
  [480, 48.25, 123.9, 95.07, 115.89],
  [490, 53.92, 120.7, 91.93, 108.78],
  [500, 59.87, 112.1, 95.7, 109.33],
  [510, 66.07, 102.3, 96.59, 107.78],
  [520, 72.5, 96.9, 97.11, 104.78],
  [530, 79.14, 98, 102.09, 107.68],
  [540, 85.95, 102.1, 100.75, 104.4],
  [550, 92.91, 105.2, 102.31, 104.04],
  [560, 100, 105.3, 100, 100],
  [570, 107.18, 102.3, 97.74, 96.34],
  [580, 114.43, 97.8, 98.92, 95.79],
  [590, 121.72, 93.2, 93.51, 88.69],
  [600, 129.03, 89.7, 97.71, 90.02],
  [610, 136.33, 88.4, 99.29, 89.61],
  [620, 143.6, 88.1, 99.07, 87.71],
  [630, 150.81, 88, 95.75, 83.3],
  [640, 157.95, 87.8, 98.9, 83.72],
  [650, 164.99, 88.2, 95.71, 80.05],
  [660, 171.92, 87.9, 98.24, 80.24],
  [670, 178.72, 86.3, 103.06, 82.3],
  [680, 185.38, 84, 99.19, 78.31],
  [690, 191.88, 80.2, 87.43, 69.74],
  [700, 198.2, 76.3, 91.66, 71.63],
  [710, 204.34, 72.4, 92.94, 74.37],
  [720, 210.29, 68.3, 76.89, 61.62],
  [730, 216.04, 64.4, 86.56, 69.91],
  [740, 221.58, 61.5, 92.63, 75.11],
  [750, 226.91, 59.2, 78.27, 63.61],
  [760, 232.02, 58.1, 57.72, 46.43],
  [770, 236.91, 58.2, 82.97, 66.83],
  [780, 241.57, 0, 78.31, 63.4],
];
