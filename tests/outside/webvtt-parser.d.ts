/** webvtt-parser comes without types: as much of it as is used here. Times in seconds. */
declare module 'webvtt-parser' {
  interface TextNode {
    type: 'text';
    value: string;
  }
  interface Cue {
    startTime: number;
    endTime: number;
    tree: { children: TextNode[] };
  }
  export class WebVTTParser {
    constructor(entities: Readonly<Record<string, string>>);
    parse(
      text: string,
      mode: 'chapters',
    ): { cues: Cue[]; errors: { message: string; line: number; col: number }[] };
  }
}
