using ColdSim.Model.Weather;

namespace ColdSim.Planning.Climate;

/// <summary>A record at a glance, row by row; it holds a handful of rows, however long the record is.</summary>
/// <param name="clock">The offset of the clock that noon is read from.</param>
/// <param name="below_K">The threshold. [K]</param>
internal sealed class RunningDigest(TimeSpan clock, double below_K)
{
    private const int ColdestShown = 5;

    private readonly List<WeatherRow> _coldest = [];
    private int _rows;
    private WeatherRow _first;
    private WeatherRow _before;
    private double _high_K = double.NegativeInfinity;
    private double _sum;
    private double _hours;
    private double _degreeHours;
    private ColdRun? _run;
    private ColdRun? _longest;
    private DateTime _night;
    private WeatherRow _coldestOfNight;

    /// <summary>Takes the next row.</summary>
    public void Add(in WeatherRow row)
    {
        if (_rows++ == 0)
            _first = row;
        else
            Between(_before, row);
        _before = row;
        _high_K = Math.Max(_high_K, row.Air_K);
        DateTime night = (row.Time.ToOffset(clock).DateTime - TimeSpan.FromHours(12)).Date;
        if (_rows == 1)
        {
            _coldestOfNight = row;
        }
        else if (night != _night)
        {
            Rank(_coldest, _coldestOfNight);
            _coldestOfNight = row;
        }
        else if (row.Air_K < _coldestOfNight.Air_K)
        {
            _coldestOfNight = row;
        }

        _night = night;
    }

    /// <summary>What there was; two rows or more.</summary>
    public WeatherDigest Read()
    {
        List<WeatherRow> coldest = [.. _coldest];
        Rank(coldest, _coldestOfNight);
        return new WeatherDigest
        {
            Below_K = below_K,
            From = _first.Time,
            To = _before.Time,
            Rows = _rows,
            Mean_K = _sum / (_before.Time - _first.Time).TotalHours,
            High_K = _high_K,
            Coldest = coldest,
            LongestRun = _longest,
            HoursBelow = _hours,
            DegreeHours_Kh = _degreeHours,
        };
    }

    private void Between(in WeatherRow a, in WeatherRow b)
    {
        double span_h = (b.Time - a.Time).TotalHours;
        _sum += (a.Air_K + b.Air_K) / 2 * span_h;
        (double from, double to) = PartBelow(a.Air_K - below_K, b.Air_K - below_K);
        if (to > from)
        {
            double cold_h = span_h * (to - from);
            double atFrom = below_K - (a.Air_K + from * (b.Air_K - a.Air_K)), atTo = below_K - (a.Air_K + to * (b.Air_K - a.Air_K));
            _hours += cold_h;
            _degreeHours += (atFrom + atTo) / 2 * cold_h;
            double low = Math.Min(a.Air_K, b.Air_K);
            DateTimeOffset end = a.Time.AddHours(span_h * to);
            _run = _run is not null && from == 0 ? _run with { To = end, Low_K = Math.Min(_run.Low_K, low) } : new ColdRun(a.Time.AddHours(span_h * from), end, low);
            if (_longest is null || _run.To - _run.From > _longest.To - _longest.From)
                _longest = _run;
        }

        if (to < 1)
            _run = null;
    }

    // Where, from 0 to 1 between two rows, the line lies below zero.
    private static (double From, double To) PartBelow(double a, double b) => (a < 0, b < 0) switch
    {
        (true, true) => (0, 1),
        (false, false) => (0, 0),
        (true, false) => (0, a / (a - b)),
        (false, true) => (a / (a - b), 1),
    };

    // Of equal ones the earlier comes first.
    private static void Rank(List<WeatherRow> coldest, in WeatherRow row)
    {
        double air_K = row.Air_K;
        int place = coldest.FindIndex(r => r.Air_K > air_K);
        coldest.Insert(place < 0 ? coldest.Count : place, row);
        if (coldest.Count > ColdestShown)
            coldest.RemoveAt(ColdestShown);
    }
}
