export type Container = 'mp4' | 'mkv';

export function containerOf(path: string): Container {
  return path.toLowerCase().endsWith('.mkv') ? 'mkv' : 'mp4';
}
