using ColdSim.Model.Engine;
using ColdSim.Planning;
using ColdSim.Planning.Measurements;
using ColdSim.Planning.Nights;

namespace ColdSim.App.Text.Pictures;

/// <summary>The curves of one night, by the minute, and of gas by five minutes.</summary>
internal sealed class NightCurves
{
    private const double Minute_s = RunSeries.Spacing_s;

    // What can be kept up changes slowly, and each of its points is an equation solved.
    private const int Coarse = 5;

    private const int HalfHour = 30;

    private readonly RunReport _report;
    private readonly NightReport _night;
    private readonly UnitStyle _units;
    private readonly int _from, _to;

    public NightCurves(RunReport report, NightReport night, UnitStyle units)
    {
        (_report, _night, _units) = (report, night, units);
        _from = (int)Math.Round((night.From - report.Scenario.Start).TotalSeconds / Minute_s);
        _to = Math.Min((int)Math.Round((night.To - report.Scenario.Start).TotalSeconds / Minute_s), report.Series.Count - 1);
        (Asked, KeptUp) = GasCurves();
    }

    public RunSeries Series => _report.Series;

    /// <summary>The clock at the first minute.</summary>
    public DateTimeOffset Start => _report.Scenario.Start.AddSeconds(_from * Minute_s);

    /// <summary>In minutes.</summary>
    public double Length => Math.Max(1, _to - _from);

    /// <summary>Gas asked for, mean of the hour around, so that a burner's cycles even out.</summary>
    public IReadOnlyList<PicturePoint> Asked { get; }

    /// <summary>Gas that the cylinders could give without end if this weather and fill stayed.</summary>
    public IReadOnlyList<PicturePoint> KeptUp { get; }

    /// <summary>When less gas was given than asked, in minutes.</summary>
    public IEnumerable<PictureSpan> Shortages
    {
        get
        {
            DateTimeOffset? since = null;
            foreach (ReportedEvent e in _report.Events)
            {
                if (e.Kind == ReportedKind.ShortBegins)
                {
                    since ??= e.Time;
                }
                else if (since is { } begun && EventKinds.EndsShortage(e.Kind))
                {
                    if (Span(begun, e.Time) is { } span)
                        yield return span;
                    since = null;
                }
            }

            if (since is { } open && Span(open, _report.Nights[^1].To) is { } last)
                yield return last;
        }
    }

    /// <summary>What was measured in this night of one quantity or another, in the person's unit; of a cylinder, while it is the one in use.</summary>
    /// <param name="read">From SI to what a person reads.</param>
    /// <param name="quantities">Which quantities.</param>
    public IReadOnlyList<PicturePoint> Measured(Func<double, double> read, params IReadOnlyList<MeasuredQuantity> quantities) =>
    [
        .. MeasuredComparison.Drawn(_report)
            .Where(m => quantities.Contains(m.Quantity) && Span(m.Time, m.Time.AddMinutes(1)) is not null)
            .Select(m => new PicturePoint((m.Time - Start).TotalMinutes, read(m.Value))),
    ];

    /// <summary>One curve in the person's unit.</summary>
    public IReadOnlyList<PicturePoint> Minutes(double[] samples, Func<double, double> read)
    {
        PicturePoint[] points = new PicturePoint[_to - _from + 1];
        for (int i = _from; i <= _to; i++)
            points[i - _from] = new(i - _from, read(samples[i]));
        return points;
    }

    /// <summary>Where less can be kept up than is asked.</summary>
    public IEnumerable<PictureArea> Gaps(string name)
    {
        List<PicturePoint> upper = [], lower = [];
        for (int i = 0; i <= Asked.Count; i++)
        {
            if (i < Asked.Count && KeptUp[i].Y < Asked[i].Y)
            {
                upper.Add(Asked[i]);
                lower.Add(KeptUp[i]);
            }
            else if (upper.Count > 0)
            {
                yield return new(name, upper, lower, IsHarm: true);
                name = "";
                (upper, lower) = ([], []);
            }
        }
    }

    private PictureSpan? Span(DateTimeOffset from, DateTimeOffset to)
    {
        double begin = Math.Max(0, (from - Start).TotalMinutes), end = Math.Min(Length, (to - Start).TotalMinutes);
        return end > begin ? new(begin, end) : null;
    }

    private (IReadOnlyList<PicturePoint> Asked, IReadOnlyList<PicturePoint> KeptUp) GasCurves()
    {
        RunSeries series = _report.Series;
        double[] sum_W = new double[_to - _from + 2];
        for (int i = _from; i <= _to; i++)
            sum_W[i - _from + 1] = sum_W[i - _from] + series.Asked_W[i];
        List<PicturePoint> asked = [], kept = [];
        for (int i = _from; i <= _to; i += Coarse)
        {
            int from = Math.Max(_from, i - HalfHour + 1), to = Math.Min(_to, i + HalfHour);
            asked.Add(new(i - _from, _units.PowerIn((sum_W[to - _from + 1] - sum_W[from - _from]) / (to - from + 1))));
            kept.Add(new(i - _from, series.Outlook is { } outlook ? _units.PowerIn(outlook.CanGiveWithoutEnd_W(series, i)) : double.NaN));
        }

        return (asked, kept);
    }
}
