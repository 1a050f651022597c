import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
const { buffer } = Uint8Array.from(readFileSync(wasm));
prepareZXingModule({ overrides: { wasmBinary: buffer } });

/** The texts of all QR codes in a PNG picture, by a decoder that knows nothing of how they were made. */
export async function readCodes(png: Uint8Array<ArrayBuffer>): Promise<readonly string[]> {
  const found = await readBarcodes(new Blob([png]), { formats: ['QRCode'], tryHarder: true });
  return found.map(({ text }) => text);
}
