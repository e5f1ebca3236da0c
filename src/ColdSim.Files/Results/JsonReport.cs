using ColdSim.Files.Weather;
using ColdSim.Planning.Capacity;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Diagnosis;
using ColdSim.Planning.Ensemble;
using ColdSim.Planning.Explain;
using ColdSim.Planning.Fits;
using ColdSim.Planning.Forecasts;
using ColdSim.Planning.Freezing;
using ColdSim.Planning.Gauges;
using ColdSim.Planning.Limits;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;
using ColdSim.Planning.Purchases;
using ColdSim.Planning.Reports;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Results;

/// <summary>Writes what a command reports as one JSON document; docs/json.md, made from the same lists, has every key.</summary>
public static class JsonReport
{
    /// <summary>Writes a run.</summary>
    /// <param name="report">What is reported.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    public static void Write(RunReport report, Stream output) => FigureJson.WriteDocument(RunDocument.Figures, new(report, null), output);

    /// <summary>Writes a run from the log's latest reading with its spans.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(ForecastReport report, Stream output)
    {
        ArgumentNullException.ThrowIfNull(report);
        FigureJson.WriteDocument(RunDocument.Figures, new(report.Run, report), output);
    }

    /// <summary>Writes a run with all that goes with it.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(RunDocument report, Stream output) => FigureJson.WriteDocument(RunDocument.Figures, report, output);

    /// <summary>Writes two answers beside each other.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(AnswerChange report, Stream output) => FigureJson.WriteDocument(AnswerChangeFigures.All, report, output);

    /// <summary>Writes a trip.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(TripReport report, Stream output) => FigureJson.WriteDocument(TripFigures.All, report, output);

    /// <summary>Writes a comparison.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(Comparison report, Stream output) => FigureJson.WriteDocument(CompareFigures.All, report, output);

    /// <summary>Writes an explanation.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(Explanation report, Stream output) => FigureJson.WriteDocument(ExplainFigures.All, report, output);

    /// <summary>Writes a limits chart.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(LimitChart report, Stream output) => FigureJson.WriteDocument(LimitFigures.All, report, output);

    /// <summary>Writes capacities of a cylinder.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(CapacityTable report, Stream output) => FigureJson.WriteDocument(CapacityFigures.All, report, output);

    /// <summary>Writes a chance of holding.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(ChanceReport report, Stream output) => FigureJson.WriteDocument(ChanceReportFigures.All, report, output);

    /// <summary>Writes a fit.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(FitReport report, Stream output) => FigureJson.WriteDocument(FitFigures.All, report, output);

    /// <summary>Writes times to freezing.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(FreezeOutlook report, Stream output) => FigureJson.WriteDocument(FreezeFigures.All, report, output);

    /// <summary>Writes readings of a cylinder.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(GaugeReport report, Stream output) => FigureJson.WriteDocument(GaugeFigures.All, report, output);

    /// <summary>Writes what instruments show.</summary>
    /// <param name="report">What is reported.</param>
    /// <param name="output">Takes UTF-8 text; stays open.</param>
    internal static void Write(ExpectedReadings report, Stream output) => FigureJson.WriteDocument(ExpectedFigures.All, report, output);

    /// <summary>Writes set-ups that can be bought.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(PurchaseReport report, Stream output) => FigureJson.WriteDocument(PurchaseFigures.All, report, output);

    /// <summary>Writes a diagnosis.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(DiagnosisReport report, Stream output) => FigureJson.WriteDocument(DiagnosisFigures.All, report, output);

    /// <summary>Writes a log.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    internal static void Write(LogDocument report, Stream output) => FigureJson.WriteDocument(LogDocument.Figures, report, output);

    /// <summary>Writes a weather file at a glance.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(WeatherFileReport report, Stream output) => FigureJson.WriteDocument(WeatherFigures.All, report, output);

    /// <summary>Writes forecasts beside observations.</summary>
    /// <inheritdoc cref="Write(RunReport, Stream)"/>
    public static void Write(ForecastVerificationReport report, Stream output) => FigureJson.WriteDocument(VerificationFigures.All, report, output);
}
