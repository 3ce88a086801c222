/** Whether `npm start` goes on serving the field app: on request, or where somebody sits at the terminal. */
export function shouldServe(
  args = process.argv.slice(2),
  env = process.env,
  interactive = process.stdout.isTTY === true && process.stdin.isTTY === true,
) {
  if (args.includes("--no-serve")) return false;
  return args.includes("--serve") || (interactive && !env.CI);
}
