namespace ColdSim.Planning.Diagnosis;

/// <summary>A cause with its place in the ranking.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Probability_frac">Its probability after all that is known.</param>
/// <param name="Evidence">What is known, weighed for it, the heaviest first.</param>
public sealed record RankedCause(Cause Cause, double Probability_frac, IReadOnlyList<Evidence> Evidence)
{
    /// <summary>Its odds: how many times likelier than not.</summary>
    public double Odds => Probability_frac / Math.Max(1e-6, 1 - Probability_frac);
}

/// <summary>Why there is no heat, as far as what is known tells.</summary>
public sealed record DiagnosisReport
{
    private const double UsualFill_frac = 0.5;
    private const double LeastFill_frac = 0.05;
    private const double Overfilled_frac = 1.08;

    /// <summary>What was asked.</summary>
    public required DiagnosisQuestion Question { get; init; }

    /// <summary>All causes, the likeliest first; none in an emergency, and none where nothing is known.</summary>
    public required IReadOnlyList<RankedCause> Causes { get; init; }

    /// <summary>What tells the first two apart at the least cost, the best first; where nothing is known, what to look at first.</summary>
    public required IReadOnlyList<NextTest> Tests { get; init; }

    /// <summary>What the model says should be seen in each state of the cylinder; none where the air's temperature is not known.</summary>
    public required IReadOnlyList<CylinderState> Expected { get; init; }

    /// <summary>Whether there is something to rank.</summary>
    public bool HasAnswer => Causes.Count > 0;

    /// <summary>Works it out.</summary>
    /// <param name="question">What is known.</param>
    public static DiagnosisReport Of(DiagnosisQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        CylinderLikelihood cylinder = new(question.Rig);
        if (question.Emergency != Emergency.None)
            return new() { Question = question, Model = cylinder.Model, Causes = [], Tests = [], Expected = [] };
        double[] p = Posterior.Of(question, cylinder);
        if (!question.HasEvidence)
            return new()
            {
                Question = question,
                Model = cylinder.Model,
                Causes = [],
                Tests = NextTest.Of(question, cylinder, p),
                Expected = []
            };
        IReadOnlyList<IReadOnlyList<Evidence>> evidence = Evidence.OfEach(question, cylinder);
        RankedCause[] ranked =
        [
            .. Posterior.Causes.Select((c, i) => new RankedCause(c, p[i], evidence[i]))
                .OrderByDescending(r => r.Probability_frac),
        ];
        return new()
        {
            Question = question,
            Model = cylinder.Model,
            Causes = ranked,
            Tests = NextTest.Of(question, cylinder, FirstTwo(p, ranked)),
            Expected = States(question, cylinder.Model),
        };
    }

    /// <summary>What tells all causes apart best, for questions one after the other.</summary>
    /// <param name="question">What is known.</param>
    public static IReadOnlyList<NextTest> Ask(DiagnosisQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        CylinderLikelihood cylinder = new(question.Rig);
        return NextTest.Of(question, cylinder, Posterior.Of(question, cylinder));
    }

    private static double[] FirstTwo(double[] p, RankedCause[] ranked)
    {
        double[] two = new double[p.Length];
        foreach (RankedCause cause in ranked.Take(2))
            two[(int)cause.Cause] = cause.Probability_frac;
        Posterior.Normalize(two);
        return two;
    }

    private static IReadOnlyList<CylinderState> States(DiagnosisQuestion question, CylinderExpectation model)
        => question.Readings.Air_K is { } air_K ? States(model, air_K, question.Readings.Left_frac) : [];

    /// <summary>What should be seen of a cylinder in each of its states.</summary>
    /// <param name="model">The model of the rig.</param>
    /// <param name="air_K">Air temperature. [K]</param>
    /// <param name="left_frac">Part of the legal filling; half where it is not known, or so little that nothing would be seen of
    /// it.</param>
    internal static IReadOnlyList<CylinderState> States(CylinderExpectation model, double air_K, double? left_frac)
    {
        double fill_frac = left_frac is { } left && left > LeastFill_frac ? Math.Min(1, left) : UsualFill_frac;
        double drawn_K = model.Drawn_K(air_K, fill_frac);
        return
        [
            .. Enum.GetValues<CylinderFault>().Select(f => f switch
            {
                CylinderFault.Empty => model.Of(f, air_K, 0, air_K, 0),
                CylinderFault.Overfilled => model.Of(f, air_K, Overfilled_frac, model.Drawn_K(air_K, 1), 0.5),
                CylinderFault.None => model.Of(f, air_K, fill_frac, drawn_K, 0.5),
                _ => model.Of(f, air_K, fill_frac, drawn_K, 0),
            }),
        ];
    }

    /// <summary>What the model says of the rig, whatever the cause.</summary>
    public required CylinderExpectation Model { get; init; }

    /// <summary>Least probability with which a cause is called likely: the scale of docs/sources.md, "Mastrandrea2010".</summary>
    public const double Likely_frac = 0.66;
}
