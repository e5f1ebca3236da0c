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

    /// <summary>Everything that is known, weighed for each cause in the order of <see cref="Posterior.Causes"/>, the heaviest
    /// first.</summary>
    internal static IReadOnlyList<IReadOnlyList<Evidence>> OfEach(DiagnosisQuestion question, CylinderLikelihood cylinder)
    {
        List<(Reading? Reading, double[] Likelihood)> read = [];
        double[]? air = question.Readings.Air_K is null ? null : cylinder.Of(new CylinderReadings { Air_K = question.Readings.Air_K });
        if (air is not null)
            read.Add((null, air));
        foreach (Reading reading in Enum.GetValues<Reading>())
        {
            if (!question.Readings.Has(reading)) continue;
            double[] both = cylinder.Of(question.Readings.Only(reading));
            read.Add((reading, air is null ? both : [.. both.Select((b, fault) => b / air[fault])]));
        }

        return
        [
            .. Posterior.Causes.Select(cause => (IReadOnlyList<Evidence>)
            [
                .. question.Counted
                    .Select(s => new Evidence(s.Key, s.Value, null, Ratio(cause, c => LikelihoodTable.Likelihood(s.Key, s.Value, c))))
                    .Concat(read.Select(r => new Evidence(null, 0, r.Reading,
                        Ratio(cause, c => r.Likelihood[(int)CylinderLikelihood.FaultOf(c)]))))
                    .OrderByDescending(e => Math.Abs(Math.Log(e.Weight))),
            ]),
        ];
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
