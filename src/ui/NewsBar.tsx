import type { LateParts, PlatformNews } from './app-models';
import './NewsBar.css';

interface Props {
  readonly news: PlatformNews;
  readonly lines: LateParts['news'];
}

/** Where the platform's news are told; it is there before any of them, so that they are read out. */
export function NewsBar({ news, lines }: Props) {
  const Lines = lines.here.value;
  return (
    <div class="news-bar">
      <output>{Lines && <Lines news={news} />}</output>
    </div>
  );
}
