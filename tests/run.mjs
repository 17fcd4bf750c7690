// `npm test`: brings what the tests need, then checks, builds and tests. Install scripts are off in this
// project, so npm's pre- and post-hooks do not run and this file does their work.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { env, exit, getuid } from 'node:process';

const NEEDED = [
  {
    program: env.CHROMIUM ?? '/usr/bin/chromium',
    debianPackage: 'chromium',
    projects: ['browser'],
  },
  { program: '/usr/bin/flite', debianPackage: 'flite', projects: ['voices', 'browser'] },
];

const run = (command, args) => spawnSync(command, args, { stdio: 'inherit' }).status === 0;
const missing = () => NEEDED.filter(({ program }) => !existsSync(program));

function install(packages) {
  const canInstall = getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (!canInstall) return;
  console.log(`installing ${packages.join(' and ')} for the tests`);
  env.DEBIAN_FRONTEND = 'noninteractive';
  run('apt-get', ['update', '-qq']);
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages]);
}

if (missing().length > 0) install(missing().map(({ debianPackage }) => debianPackage));
const absent = missing();
const skipped = new Set(absent.flatMap(({ projects }) => projects));
const projects = ['rooms', 'voices', 'browser'].filter((project) => !skipped.has(project));

const passed =
  run('npm', ['run', '--silent', 'check']) &&
  run('npm', ['run', '--silent', 'build']) &&
  run('npx', ['vitest', 'run', ...projects.flatMap((project) => ['--project', project])]);

for (const { program, debianPackage, projects: without } of absent) {
  console.log(
    `${program} is missing, so the ${without.join(' and ')} tests did not run. ` +
      `Install it (on Debian: apt-get install ${debianPackage}) and run npm test again.`,
  );
}
exit(passed ? 0 : 1);
