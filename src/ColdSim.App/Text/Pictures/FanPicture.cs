using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Forecasts;

namespace ColdSim.App.Text.Pictures;

/// <summary>The fan of a chance: what is left and inside air, the middle member as a line and eight in ten as a band.</summary>
internal static class FanPicture
{
    private const int Minute_s = 60;

    public static StripPicture Of(ChanceReport chance, UnitStyle units)
    {
        IReadOnlyList<FanPoint> fan = chance.Fan;
        List<PictureStrip> strips = [Strip("Left", fan, p => p.Left_kg, units.MassIn, units.MassUnit, 0)];
        if (fan.Any(p => p.Inside_K is not null))
            strips.Add(Strip("Inside", fan, p => p.Inside_K, units.TemperatureIn, units.TemperatureUnit, null));
        return new(
            "chance", "The spread of the chance",
            $"The spread over {ChanceSentence.Count(chance.Done)} {ChanceSentence.Members(chance, chance.Done)}: the middle one as a line, eight in ten "
                + $"within the band. {ChanceSentence.Of(chance)}",
            chance.Scenario.Start, fan.Count > 0 ? Math.Max(1, fan[^1].Time_s / Minute_s) : 1, strips);
    }

    private static PictureStrip Strip(
        string name, IReadOnlyList<FanPoint> fan, Func<FanPoint, Spread<double>?> of, Func<double, double> read, string unit, double? least)
    {
        FanPoint[] known = [.. fan.Where(p => of(p) is not null)];
        PicturePoint[] low = Edge(known, p => read(of(p)!.Low)), high = Edge(known, p => read(of(p)!.High));
        return new(
            name, ValueAxis.Around(least ?? low.Min(p => p.Y), high.Max(p => p.Y), unit),
            [new("half lie below", Edge(known, p => read(of(p)!.Median)), PictureStroke.Line) { Decimals = 1 }])
        {
            Areas = [new("8 in 10 within", high, low, IsHarm: false)],
        };
    }

    private static PicturePoint[] Edge(FanPoint[] fan, Func<FanPoint, double> of)
        => [.. fan.Select(p => new PicturePoint(p.Time_s / Minute_s, of(p)))];
}
