import type { WorkKindId } from '../../terms/names.ts';

interface WorkNames {
  /** "I … the condenser" */
  readonly done: readonly string[];
  /** "they should … it" */
  readonly todo: readonly string[];
  /** "it needs …" */
  readonly doing: readonly string[];
}

export const WORK_NAMES: Record<WorkKindId, WorkNames> = {
  clean: {
    done: [
      'cleaned',
      '~(cleaned (up|off|out)|blew out|blew off|vacuumed|cleared [out]|flushed [out]|brushed and vacuumed|blew (down|through)|degreased|unplugged|unclogged|snaked|blown (out|off)|wiped (down|off))',
    ],
    todo: ['clean', '~(clean (up|off|out)|clear|flush|blow out|unclog|unplug)'],
    doing: [
      'cleaning',
      '~(cleaning (out|off|up)|blowing (out|off)|a [good] cleaning|to be cleaned|cleaned|clearing|flushing)',
    ],
  },
  reset: { done: ['reset', '~reset it'], todo: ['~reset'], doing: ['~(resetting|to be reset)'] },
  replace: {
    done: [
      'replaced',
      '~(changed|changed out|swapped|swapped out|put in a (new|replacement)|installed a new|put on a new|put a new|installed new|put in new|exchanged|renewed|swapped in [(a|new)]|(brazed|sweated|welded|soldered|cut) in a [new]|switched out|substituted|installed (a|the) replacement|put in another|put another)',
      '~~fitted [(a|some)] (new|replacement)',
    ],
    todo: [
      'replace',
      '~(exchange|renew|switch out|change|change out|swap|swap out|put in a new|put on a new|install a new|get a new)',
    ],
    doing: [
      'replacing',
      '~((replacement|a change [out])|changing out|swapping out|exchanging|putting in a new|to be replaced|replaced|changing|changed|swapping)',
    ],
  },
  adjust: {
    done: [
      'adjusted',
      '~(readjusted|set|tweaked|bumped (up|down)|turned (in|out)|turned down|turned up|opened up|dialed in|backed off|calibrated|recalibrated|reset the setting on|dialed (up|down))',
    ],
    todo: ['adjust', '~(readjust|turn down|turn up)'],
    doing: [
      '~(adjusting|adjustment|to be adjusted|adjusted|an adjustment|calibrating|to be calibrated)',
    ],
  },
  repair: {
    done: [
      'repaired',
      '~(fixed|patched|brazed|soldered|rewired|rebuilt|straightened [out]|combed|rebrazed|sealed [up]|resoldered|mended|spliced|re soldered|welded|re brazed|taped up|made repairs to)',
      '~~(sleeved|re crimped|recrimped|butt spliced|re terminated)',
    ],
    todo: ['repair', '~(fix|splice|seal|solder|patch|braze|rewire|rebuild)'],
    doing: ['~(repairing|repair|to be repaired|fixing|to be fixed|repaired|fixed)'],
  },
  tighten: {
    done: [
      'tightened',
      '~(retightened|re tightened|cinched [(up|down)]|nipped [up]|torqued [down]|strapped|clamped [down]|tightened (up|down)|snugged [up]|secured|strapped down)',
    ],
    todo: ['~(tighten|tighten up|secure)'],
    doing: ['~(tightening|to be tightened|tightened [(up|down)])'],
  },
  remove: {
    done: ['removed', '~(took off|took out|pulled|pulled out|pulled off|cut out|dismounted)'],
    todo: ['~(remove|take out|take off|pull)'],
    doing: ['~(removing|to be removed)'],
  },
  add: {
    done: ['~(added|installed|put in|put on|~~fitted)'],
    todo: ['~(add|install|put in)'],
    doing: ['~(adding|to be added)'],
  },
  recover: {
    done: ['recovered', '~(reclaimed|recovered out)'],
    todo: ['~(recover|reclaim)'],
    doing: ['~(recovering|to be recovered)'],
  },
  evacuate: {
    done: ['evacuated', '~(pulled a vacuum on|vacuumed down|pulled down)'],
    todo: ['~(evacuate|pull a vacuum on)'],
    doing: ['~(evacuating|to be evacuated)'],
  },
  pumpDown: {
    done: ['~(pumped down|did a pump down on)'],
    todo: ['~(pump down|do a pump down on)'],
    doing: ['~(pumping down|a pump down|to be pumped down)'],
  },
  pressureTest: {
    done: ['pressure tested', '~nitrogen tested'],
    todo: ['~pressure test'],
    doing: ['~(pressure testing|a pressure test|to be pressure tested)'],
  },
  leakCheck: {
    done: [
      'leak checked',
      '~(leak (tested|searched)|checked for leaks [(on|at)]|bubble tested|sniffed|soaped [up]|soap tested|bubbled|searched for leaks [(on|at)]|went over [all] with (soap|bubbles|the sniffer))',
    ],
    todo: ['leak check', '~(leak test|leak search|check for leaks)'],
    doing: ['~(leak checking|a leak (check|search|test)|leak checked|to be leak checked)'],
  },
  brush: {
    done: ['brushed', '~(brushed (off|out|down)|scrubbed [(off|out|down)])'],
    todo: ['~brush'],
    doing: ['~brushing [(out|off|down)]'],
  },
  wash: {
    done: [
      'washed',
      '~(washed (down|out|off)|rinsed (off|out|down)|hosed (down|off|out)|rinsed|chemically cleaned|pressure washed)',
    ],
    todo: ['~(wash|rinse|hose down)'],
    doing: ['~(washing [(down|off|out)]|a [good] wash|hosing (off|down|out)|to be washed|washed)'],
  },
  defrost: {
    done: ['defrosted', '~(thawed|thawed out|melted (off|down)|de iced|deiced)'],
    todo: ['~(defrost|thaw|thaw out)'],
    doing: ['~(defrosting|to be defrosted|defrosted|a [manual] defrost)'],
  },
  restore: {
    done: [
      '~(restored|reinstalled|put back|reconnected|turned back on|plugged back in|hooked back up)',
    ],
    todo: ['~(restore|put back|reconnect|turn back on)'],
    doing: ['~restoring'],
  },
  isolate: {
    done: ['~(isolated|shut off|valved off|locked out|closed off|front seated)'],
    todo: ['~(isolate|shut off|valve off)'],
    doing: ['~isolating'],
  },
  bypass: {
    done: [
      '~(bypassed|jumped|jumped out|jumpered|jumpered out|jumped around|put a jumper (on|across))',
    ],
    todo: ['~bypass'],
    doing: ['~bypassing'],
  },
  disable: {
    done: ['~(disabled|disconnected|unhooked|pulled the (leads|wires) off)'],
    todo: ['~(disable|disconnect|unhook)'],
    doing: ['~disabling'],
  },
  open: { done: ['~opened'], todo: ['~open'], doing: ['~opening'] },
  connect: {
    done: ['~(hooked up|connected|hooked on|screwed on)'],
    todo: ['~(hook up|connect)'],
    doing: ['~(hooking up|connecting)'],
  },
  setForTest: { done: [], todo: [], doing: [] },
  order: {
    done: ['~ordered'],
    todo: ['~(order|get|buy|pick up|bring)'],
    doing: ['~(ordering|to be ordered)'],
  },
  comeBack: { done: [], todo: [], doing: [] },
  asSaid: { done: [], todo: [], doing: [] },
};
