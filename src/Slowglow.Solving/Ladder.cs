namespace Slowglow.Solving;

/// <summary>What is tried, in order, with a world that plain Newton does not settle.</summary>
internal static class Ladder
{
    private const int Most = 80;

    public static void Climb(StaticSolver solver, StaticProblem problem)
    {
        problem.Settled = FromRest(solver, problem) || ConductanceSteps(solver, problem) || SourceSteps(solver, problem);
        problem.Solution = solver.Now();
    }

    private static bool FromRest(StaticSolver solver, StaticProblem problem)
    {
        solver.LoadEverywhere(problem, new double[problem.Start.Length]);
        if (solver.Settle(1, 0, Most))
        {
            return true;
        }

        solver.LoadEverywhere(problem, problem.Start);
        return solver.Settle(1, 0, 3 * Most, 0.3);
    }

    /// <summary>Starts with every net well tied to ground and lets go by degrees.</summary>
    private static bool ConductanceSteps(StaticSolver solver, StaticProblem problem)
    {
        solver.LoadEverywhere(problem, new double[problem.Start.Length]);
        for (var extra = 1e-2; extra > 1e-13; extra /= 4)
        {
            if (!solver.Settle(1, extra, Most))
            {
                return false;
            }
        }

        return solver.Settle(1, 0, Most);
    }

    /// <summary>Brings the sources up from nothing, halving the step where it fails.</summary>
    private static bool SourceSteps(StaticSolver solver, StaticProblem problem)
    {
        var start = new double[problem.Start.Length];
        double reached = 0,
            step = 0.1;
        while (reached < 1 && step > 1e-4)
        {
            var target = Math.Min(1, reached + step);
            solver.LoadEverywhere(problem, start);
            if (solver.Settle(target, 0, Most))
            {
                (reached, start, step) = (target, solver.Now(), step * 1.5);
            }
            else
            {
                step /= 2;
            }
        }

        return reached >= 1;
    }
}
