using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Looks at the rows of a weather file as they are read for what is accepted and probably wrong.</summary>
internal sealed class UnusualRows(WeatherFaults faults)
{
    private const double Rounding_K = 0.05;
    private const double Above_K = 1;
    private const double Jump_K = 25;
    private const double Fraction_frac = 0.01;
    private const double Wind_m_s = 45;

    private static readonly UnusualValue DewPoint = new(
        "dew point", "over 1 K above the air; up to 1 K is read as the air's temperature and counted", "at most the air's temperature", UnusualValue.OurChoice);

    private static readonly UnusualValue Jump = new(
        "air", "over 25 K from one row to the next, or over 25 K an hour where rows are more than an hour apart", "up to 10 K an hour; a chinook may bring more, and is run as it is written", UnusualValue.FromMemory);

    private static readonly UnusualValue Cloud = new(
        "cloud", "some cloud, and never over 1 %", "0 to 100 under %; a fraction such as 0.4 is written as 40", UnusualValue.OurChoice);

    private static readonly UnusualValue Wind = new(
        "wind", "over 45 m/s (100 mph) as a mean", "up to 30 m/s (67 mph)", UnusualValue.FromMemory);

    /// <summary>All that is looked for.</summary>
    public static IReadOnlyList<UnusualValue> Declared => [DewPoint, Jump, Cloud, Wind, MissingMarks.Declared];

    private readonly Extreme _dewPoint = new(), _jumps = new(), _winds = new();
    private long _clamped;
    private double _cloudiest_frac = double.NaN;
    private WeatherRow _before;
    private bool _begun;

    /// <summary>The row with its dew point no higher than its air.</summary>
    public WeatherRow Take(in WeatherRow row, int line)
    {
        if (_begun)
        {
            double jump_K = Math.Abs(row.Air_K - _before.Air_K), hours = Math.Max(1, (row.Time - _before.Time).TotalHours);
            if (jump_K > Jump_K * hours)
                _jumps.Add(line, jump_K);
        }

        (_before, _begun) = (row, true);
        if (row.Cloud_frac is { } cloud_frac && !(cloud_frac <= _cloudiest_frac))
            _cloudiest_frac = cloud_frac;
        if (row.Wind_m_s > Wind_m_s)
            _winds.Add(line, row.Wind_m_s.Value);
        if (row.DewPoint_K - row.Air_K is not > Rounding_K)
            return row;
        double above_K = row.DewPoint_K!.Value - row.Air_K;
        if (above_K > Above_K)
            _dewPoint.Add(line, above_K);
        else
            _clamped++;
        return row with { DewPoint_K = row.Air_K };
    }

    /// <summary>Warns of what was found.</summary>
    public void Finish()
    {
        if (_clamped > 0)
            faults.Note($"{faults.File}: dew point up to 1 K above the air in {Rows(_clamped)}, read as the air's temperature");
        if (_dewPoint.Count > 0)
            faults.Warn(DewPoint, FormattableString.Invariant($"{faults.File}:{_dewPoint.Line}: dew point above the air in {Rows(_dewPoint.Count)}, by up to {_dewPoint.Most:0.#} K, read as the air's temperature"));
        if (_jumps.Count > 0)
            faults.Warn(Jump, FormattableString.Invariant($"{faults.File}:{_jumps.Line}: the air changes by {_jumps.Most:0.#} K from one row to the next{(_jumps.Count == 1 ? "" : FormattableString.Invariant($", the largest of {_jumps.Count} such jumps"))}"));
        if (_cloudiest_frac is > 0 and <= Fraction_frac)
            faults.Warn(Cloud, FormattableString.Invariant($"{faults.File}: cloud is never over {_cloudiest_frac * 100:0.##} %"));
        if (_winds.Count > 0)
            faults.Warn(Wind, FormattableString.Invariant($"{faults.File}:{_winds.Line}: wind of {_winds.Most:0.#} m/s"));
    }

    private static string Rows(long count) => count == 1 ? "1 row" : FormattableString.Invariant($"{count} rows");

    // How often something was found, and where it was largest.
    private sealed class Extreme
    {
        public long Count { get; private set; }

        public int Line { get; private set; }

        public double Most { get; private set; }

        public void Add(int line, double value)
        {
            if (Count++ == 0 || value > Most)
                (Line, Most) = (line, value);
        }
    }
}
