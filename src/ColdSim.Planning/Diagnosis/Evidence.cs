namespace ColdSim.Planning.Diagnosis;

/// <summary>One thing that is known, and which way it speaks.</summary>
/// <param name="Sign">The sign; null for a reading.</param>
/// <param name="State">Its state.</param>
/// <param name="Reading">The reading; null for a sign, and for the air's temperature.</param>
/// <param name="Weight">How often it is seen under the cause, over how often under all others: above 1 it speaks for the cause.</param>
public sealed record Evidence(Sign? Sign, int State, Reading? Reading, double Weight)
{
    /// <summary>Less than this factor either way says nothing.</summary>
    public const double Telling = 1.4;

    /// <summary>Whether it speaks for the cause.</summary>
    public bool IsFor => Weight >= Telling;

    /// <summary>Whether it speaks against it.</summary>
    public bool IsAgainst => Weight <= 1 / Telling;

    /// <summary>Everything that is known, weighed for a cause, the heaviest first.</summary>
    internal static IReadOnlyList<Evidence> Of(DiagnosisQuestion question, CylinderLikelihood cylinder, Cause cause)
    {
        List<Evidence> all = [];
        foreach ((Sign sign, int state) in question.Counted)
            all.Add(new(sign, state, null, Ratio(cause, c => LikelihoodTable.Likelihood(sign, state, c))));
        if (question.Readings.Air_K is not null)
        {
            double[] air = cylinder.Of(new CylinderReadings { Air_K = question.Readings.Air_K });
            all.Add(new(null, 0, null, Ratio(cause, c => air[(int)CylinderLikelihood.FaultOf(c)])));
            foreach (Reading reading in Enum.GetValues<Reading>())
            {
                if (!question.Readings.Has(reading)) continue;
                double[] both = cylinder.Of(question.Readings.Only(reading));
                all.Add(new(null, 0, reading, Ratio(cause,
                    c => both[(int)CylinderLikelihood.FaultOf(c)] / air[(int)CylinderLikelihood.FaultOf(c)])));
            }
        }
        else
        {
            foreach (Reading reading in Enum.GetValues<Reading>())
            {
                if (!question.Readings.Has(reading)) continue;
                double[] alone = cylinder.Of(question.Readings.Only(reading));
                all.Add(new(null, 0, reading, Ratio(cause, c => alone[(int)CylinderLikelihood.FaultOf(c)])));
            }
        }

        return [.. all.OrderByDescending(e => Math.Abs(Math.Log(e.Weight)))];
    }

    private static double Ratio(Cause cause, Func<Cause, double> likelihood)
    {
        double others = 0, prior = 0;
        foreach (Cause other in Posterior.Causes)
        {
            if (other == cause) continue;
            others += LikelihoodTable.Prior(other) * likelihood(other);
            prior += LikelihoodTable.Prior(other);
        }

        return likelihood(cause) / Math.Max(1e-12, others / prior);
    }
}
