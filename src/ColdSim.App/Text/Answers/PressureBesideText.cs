using ColdSim.Planning.Gauges;

namespace ColdSim.App.Text.Answers;

/// <summary>What a pressure says beside weights or levels: how warm the liquid is, or that something is wrong; never how much there is.</summary>
internal static class PressureBesideText
{
    /// <summary>The sentences; null where no pressure was read beside other readings.</summary>
    public static string? Of(GaugeReport report, UnitStyle units)
    {
        if (report.IsPressureAlone || report.Question.Liquid is not { ByPressure: { } pressure } liquid)
            return null;
        string propane = $"propane has that pressure at {units.WholeTemperature(pressure.Temperature_K)}";
        string measured = liquid.ByThermometer_K is { } measured_K ? units.WholeTemperature(measured_K) : "";
        bool usesLevels = report.Question.Readings.Any(r => r is not WeightReading);
        string levels = usesLevels ? " The levels use it." : " A weight needs no temperature.";
        return liquid.Source switch
        {
            TemperatureSource.Pressure => $"The pressure says how warm the liquid is, not how much is left: {propane}, give or take "
                + $"{units.WholeDifference(2 * pressure.Error_K)}.{levels}",
            TemperatureSource.Both => $"Pressure and thermometer agree: the liquid is at {units.WholeTemperature(liquid.Temperature_K)}, "
                + $"give or take {units.WholeDifference(2 * liquid.Error_K)}. A pressure does not say how much is left.",
            TemperatureSource.PressureTooLow => $"The pressure is too low for {measured}: {propane}. "
                + $"Either the liquid is colder than where you measured, or butane or no liquid is left.{Ignored(usesLevels)}",
            TemperatureSource.PressureTooHigh => $"The pressure is too high for {measured}: {propane}. "
                + $"Either the liquid is warmer than where you measured, or lighter gas or air is in it.{Ignored(usesLevels)}",
            _ => null,
        };
    }

    private static string Ignored(bool usesLevels) => usesLevels ? " The levels use the thermometer." : "";
}
