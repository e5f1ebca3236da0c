using ColdSim.Model.Engine;
using ColdSim.Planning.Harms;

namespace ColdSim.Planning.Nights;

/// <summary>Reads each night off a run as soon as it is over, so that its curves need not be kept.</summary>
internal sealed class NightReader : IRunObserver
{
    // The demand at a night's coldest minute is a mean over the half hour around it.
    private const int SamplesAfter = 31;

    // The longest night, a first one from dawn to the next day's noon, and what is kept before and after it take half of it.
    private const int RoomOfSliding = 4 * 1440;

    private readonly Scenario _scenario;
    private readonly NightCalendar _calendar;
    private readonly IReadOnlyList<Leg> _legs;
    private readonly RunDetail _detail;
    private readonly RunSeries _series;
    private readonly SeriesRecorder _recorder;
    private readonly List<NightReport> _nights = [];
    private RunSeries? _failed;

    /// <summary>A reader of a run.</summary>
    /// <param name="scenario">The scenario that is run.</param>
    /// <param name="calendar">Its nights.</param>
    /// <param name="legs">Its legs.</param>
    /// <param name="detail">What is kept.</param>
    public NightReader(Scenario scenario, NightCalendar calendar, IReadOnlyList<Leg> legs, RunDetail detail)
    {
        (_scenario, _calendar, _legs, _detail) = (scenario, calendar, legs, detail);
        double room_s = detail == RunDetail.Curves ? calendar.Duration_s : Math.Min(calendar.Duration_s, RoomOfSliding * RunSeries.Spacing_s);
        _series = new RunSeries(
            room_s, scenario.Rig.Cylinders.Count, scenario.Rig.GasPlaces, scenario.Rig.Nodes().Count, scenario.Rig.Gas.IsMixed, scenario.Rig.Power is not null)
        {
            Outlook = new LegOutlook(legs, leg => new SupplyOutlook(leg.Of(scenario.Rig), leg.Weather, scenario.Start)),
        };
        _recorder = new SeriesRecorder(_series);
        Watch = new NightWatch(scenario, calendar, this, detail);
    }

    /// <summary>Splits the run into nights; the run's own observer.</summary>
    public NightWatch Watch { get; }

    /// <summary>The nights that are over, all of them once the run is <see cref="Finish"/>ed.</summary>
    public IReadOnlyList<NightReport> Nights => _nights;

    /// <summary>The curves, once the run is over.</summary>
    public RunCurves Curves => _detail == RunDetail.Curves
        ? new(_series)
        : new(_failed, _series.FirstSample + _series.Count, () => NightRun.Try(_scenario, RunDetail.Curves).ReportOrThrow().Series);

    /// <inheritdoc/>
    public void Stepped(StepRecord record)
    {
        if (_detail != RunDetail.Curves) MakeRoom(record.To.Time_s);
        _recorder.Stepped(record);
        while (_series.Time_s(_series.Count - 1) >= _calendar.End_s(_nights.Count) + SamplesAfter * RunSeries.Spacing_s) Read();
    }

    /// <inheritdoc/>
    public void Happened(in SimulationEvent happened, in Snapshot snapshot)
    {
    }

    /// <summary>Reads what is left when the run is over. A boundary reached exactly opens a night in which nothing was run.</summary>
    public void Finish()
    {
        while (_nights.Count < Watch.Nights.Count && !double.IsNaN(Watch.Nights[_nights.Count].PropaneAtStart_kg)) Read();
    }

    private void MakeRoom(double to_s)
    {
        if (_series.FirstSample + _series.Count + _series.Room > (int)Math.Floor(to_s / RunSeries.Spacing_s)) return;
        int needed = FirstNeeded(_nights.Count) - _series.FirstSample;
        if (needed > 0) _series.DropFirst(needed);
    }

    private int FirstNeeded(int night) => Math.Max(0, (int)Math.Floor(_calendar.Begin_s(night) / RunSeries.Spacing_s) - RunCurves.LookBack);

    private void Read()
    {
        int number = _nights.Count;
        NightReport night = NightReading.Of(number + 1, Watch.Nights[number], _scenario, _calendar.Evening(number), _series, _legs);
        _nights.Add(night);
        if (_detail == RunDetail.Curves || _failed is not null || night.Verdict == Verdict.Holds) return;
        int last = (int)Math.Floor(_calendar.End_s(number) / RunSeries.Spacing_s) + RunCurves.LookAhead;
        _failed = _series.Part(FirstNeeded(number) - _series.FirstSample, last - _series.FirstSample);
    }
}
