package entracte.plan;

import entracte.check.PatchBuilder;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;

/**
 * A tool-switching problem as a set: a job is a song, a tool is a cord between two modules of its
 * own, the magazine is the bag of cords.
 *
 * @param rows for each tool a figure for each job, 1 if the job needs the tool, with blanks between
 *     the tools
 */
record ToolSet(int slots, String rows) {
  private String[] tools() {
    return rows.strip().split("\\s+");
  }

  private int jobs() {
    return tools()[0].length();
  }

  private boolean needs(int job, int tool) {
    return tools()[tool].charAt(job) == '1';
  }

  ToolSwitches switches() {
    long[] needs = new long[jobs()];
    for (int job = 0; job < needs.length; job++) {
      for (int tool = 0; tool < tools().length; tool++) {
        needs[job] |= needs(job, tool) ? 1L << tool : 0;
      }
    }
    return new ToolSwitches(needs, slots);
  }

  PlayableSet set() {
    RigBuilder rig =
        RigBuilder.rig()
            .kind("giver", k -> k.out("wave"))
            .kind("taker", k -> k.in("audio").out("out").leaves("out"))
            .cords(slots);
    List<String> modules = new ArrayList<>();
    for (int tool = 1; tool <= tools().length; tool++) {
      modules.add("give " + tool + ": giver");
      modules.add("take " + tool + ": taker");
    }
    rig.row(modules.toArray(String[]::new));
    List<Song> songs = new ArrayList<>();
    for (int job = 0; job < jobs(); job++) {
      PatchBuilder patch = PatchBuilder.patch("job " + (job + 1));
      for (int tool = 0; tool < tools().length; tool++) {
        if (needs(job, tool)) {
          patch.cord("give " + (tool + 1) + ".wave", "take " + (tool + 1) + ".audio");
        }
      }
      songs.add(patch.song());
    }
    return SetBuilder.playable(new SetList("jobs", rig.build(), songs, true));
  }
}
