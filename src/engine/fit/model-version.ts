/**
 * Goes up when the model behind the predictions changes. Readings taken under an older one are
 * fitted anew by the present one; none is ever thrown away.
 */
export const MODEL_VERSION = 3;
