const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "access is not allowed",
  EPERM: "access is not allowed",
  EISDIR: "this is a folder; name a file",
  ENOTDIR: "a part of the path is a file, not a folder",
  ENOSPC: "no space is left",
  EDQUOT: "no space is left for this user",
  EROFS: "the place is read-only",
  EFBIG: "the file would be too large",
  EIO: "the device failed",
  EPIPE: "the reader closed it before everything was written",
};

/** Why the system refused, in words where they are known. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = (error as NodeJS.ErrnoException).code;
  return code === undefined ? error.message : `${REASONS[code] ?? error.message} (${code})`;
}
