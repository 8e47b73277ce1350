package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.Collection;
import java.util.List;

/** A constraint model with the few sentences that this oracle says. */
final class Cp {
  final CpModel model = new CpModel();

  BoolVar bool(String name) {
    return model.newBoolVar(name);
  }

  static LinearExpr sum(Collection<? extends LinearArgument> terms) {
    LinearExprBuilder builder = LinearExpr.newBuilder();
    terms.forEach(builder::add);
    return builder.build();
  }

  /** {@code left <= sum of right}. */
  void atMostSum(LinearArgument left, List<? extends LinearArgument> right) {
    model.addLessOrEqual(left, sum(right));
  }

  void equal(LinearArgument left, LinearArgument right) {
    model.addEquality(left, right);
  }

  void atMost(LinearArgument left, long right) {
    model.addLessOrEqual(left, right);
  }

  void atLeast(LinearArgument left, long right) {
    model.addGreaterOrEqual(left, right);
  }

  void atMostOne(Collection<? extends Literal> literals) {
    if (literals.size() > 1) {
      model.addAtMostOne(literals.toArray(new Literal[0]));
    }
  }

  void exactlyOne(Collection<? extends Literal> literals) {
    model.addExactlyOne(literals.toArray(new Literal[0]));
  }

  void implies(Literal one, Literal other) {
    model.addImplication(one, other);
  }
}
