package hullalmanac.cli;

import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says which version this is. */
final class Version implements IVersionProvider {
  @Spec private CommandSpec spec;

  @Override
  public String[] getVersion() {
    HullAlmanacCommand root = (HullAlmanacCommand) spec.root().userObject();
    return new String[] {"Hull Almanac " + root.context().version()};
  }
}
