/** In place of d3-color: what interpolating between colours would call, and nothing that is drawn here has a colour between two. */
export class color {}
export const rgb = undefined;
export const hsl = undefined;
export const lab = undefined;
export const hcl = undefined;
export const cubehelix = undefined;
