namespace ColdSim.Validation.Furnace;

/// <summary>What our run of a furnace case came to over its ninety days, and its comparisons.</summary>
internal sealed class FurnaceResult
{
    private static readonly DateTimeOffset CaseEnd = new(2027, 4, 1, 0, 0, 0, TimeSpan.FromHours(-5));

    private FurnaceResult(FurnaceCase of)
    {
        Case = of;
        CaseRun run = CaseRun.Of($"furnace/{of.Name}.toml");
        int hours = (int)Math.Round((CaseEnd - run.Scenario.Start).TotalHours), end = 60 * hours;
        Input_GJ = run.Gas_kg(0, end) * run.Scenario.Rig.Gas.HeatingValue_J_kg / 1e9;
        Hourly_C = run.HourlyInside_C(hours);
        Start = run.Scenario.Start;
    }

    public FurnaceCase Case { get; }

    public DateTimeOffset Start { get; }

    /// <summary>Gross heat of the gas. [GJ]</summary>
    public double Input_GJ { get; }

    /// <summary>Heat of the furnace, the fan's left out. [GJ]</summary>
    public double Load_GJ => Input_GJ * Case.Efficiency_frac;

    /// <summary>Mean inside temperature of each hour. [°C]</summary>
    public IReadOnlyList<double> Hourly_C { get; }

    public static FurnaceResult Of(FurnaceCase of) => new(of);

    /// <summary>Ours beside what is printed: 0.3 % of analytic results; of programs' results their spread, widened by 0.5 % and 0.3 K.</summary>
    public IEnumerable<Comparison> Comparisons()
    {
        bool analytic = Case.LoadLow_GJ == Case.LoadHigh_GJ;
        yield return new(Case.Name, "furnace load, GJ", Load_GJ, Case.LoadLow_GJ, Case.LoadHigh_GJ, (analytic ? 0.003 : 0.005) * Case.LoadHigh_GJ, 2);
        if (Case.Input_GJ is { } input)
            yield return new(Case.Name, "furnace input, GJ", Input_GJ, input, input, Case.InputIsJudged ? 0.003 * input : null, 2);
        if (Case.Mean_C is { } mean)
            yield return new(Case.Name, "mean inside, °C", Hourly_C.Average(), mean.Low, mean.High, 0.3, 2);
        if (Case.Minimum_C is { } low)
            yield return new(Case.Name, "lowest hourly mean inside, °C", Hourly_C.Min(), low.Low, low.High, 0.3, 2);
    }
}
