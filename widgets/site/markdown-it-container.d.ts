declare module 'markdown-it-container' {
  import type { MarkdownIt, Token } from 'markdown-it';
  export default function container(
    md: MarkdownIt,
    name: string,
    options: { render: (tokens: Token[], index: number) => string },
  ): void;
}
