import { mergeConfig } from 'vite';
import config from '../../vite.config';
import { NEXT_VERSION_MARK } from './build-next-version';

/** The app's own build with one visible difference in the page and one in the script. */
export default mergeConfig(config, {
  build: { emptyOutDir: true },
  plugins: [
    {
      name: 'next-version',
      transform: (code: string, id: string) =>
        id.endsWith('src/main.tsx')
          ? `${code}\ndocument.documentElement.dataset.version = '${NEXT_VERSION_MARK}';`
          : undefined,
      transformIndexHtml: () => [
        { tag: 'meta', attrs: { name: 'version', content: NEXT_VERSION_MARK }, injectTo: 'head' },
      ],
    },
  ],
});
