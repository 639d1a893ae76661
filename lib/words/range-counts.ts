/** Of what a range is made up: every sheet is counted once among those measured, those not, and those without a colour. */
export interface RangeCounts {
  /** Colours whose masstone an instrument read. */
  readonly measured: number;
  /** Mediums whose film an instrument read. */
  readonly mediums: number;
  /** Matched by eye to a chip, or known by somebody's figures. */
  readonly byEye: number;
  /** Without a colour to show yet. */
  readonly unread: number;
  /** Of all these, let down in a white. */
  readonly tinted: number;
}
