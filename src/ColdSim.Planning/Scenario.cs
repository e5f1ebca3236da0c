using ColdSim.Model;
using ColdSim.Model.Weather;

namespace ColdSim.Planning;

/// <summary>One question to the simulator: this rig, this weather, from then on.</summary>
public sealed record Scenario
{
    public required string Title { get; init; }

    public required Rig Rig { get; init; }

    /// <summary>In which country the coach is, as two letters of ISO 3166; null where nothing is said. Rules are quoted by it.</summary>
    public string? Country { get; init; }

    /// <summary>The fit that is applied to the rig, or null.</summary>
    public ScenarioFit? Fit { get; init; }

    /// <summary>The weather over it.</summary>
    public required WeatherSeries Weather { get; init; }

    /// <summary>Defaults for what the weather does not state; the air of a standard night.</summary>
    public WeatherDefaults WeatherDefaults { get; init; } = new();

    /// <summary>When the run starts; its offset is the clock of the run.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Whether the start is the present moment, so that the next hour is what is asked for.</summary>
    public bool StartsNow { get; init; }

    /// <summary>How many nights to run, each ending at noon; null runs to the end of the weather.</summary>
    public int? Nights { get; init; }

    /// <summary>
    /// Legs in order, each beginning where the one before ends, the first at <see cref="Start"/>; empty for a run in one place on
    /// <see cref="Weather"/>.
    /// </summary>
    public IReadOnlyList<Leg> Legs { get; init; } = [];

    /// <summary>Place in its file of each of the rig's cylinders, from 0; empty where the rig has them in the file's order.</summary>
    public IReadOnlyList<int> FilePlaces { get; init; } = [];

    /// <summary>The log's reading that the run starts from; null where it starts as the file says.</summary>
    public LogStart? StartedFrom { get; init; }

    /// <summary>What was measured beside contents, from its log: compared with a run, never used by one.</summary>
    internal IReadOnlyList<Measurement> Measurements { get; init; } = [];

    /// <summary>The scenario with whatever names a cylinder by its place brought to another order of the rig's cylinders.</summary>
    /// <param name="order">The present place of each cylinder of that order.</param>
    /// <remarks>The rig itself is put in that order by the caller.</remarks>
    internal Scenario WithPlacesIn(int[] order) => this with
    {
        FilePlaces = [.. order.Select(FilePlaceOf)],
        Measurements = [.. Measurements.Select(m => m.Cylinder is { } place ? m with { Cylinder = Array.IndexOf(order, place) } : m)],
    };

    /// <summary>The stops and refills that <see cref="Legs"/> were made of; null for a run in one place without refills.</summary>
    public Trip? Trip { get; init; }

    /// <summary>When the furnace stops and stays out, as after a lockout that nobody resets; null where it does not.</summary>
    public DateTimeOffset? HeatStops { get; init; }

    public Prices Prices { get; init; } = new();

    /// <summary>Longest time step. [s]</summary>
    public double Step_s { get; init; } = DefaultStep_s;

    /// <summary>What holding, short and dry mean here.</summary>
    public NightCriteria Criteria { get; init; } = new();

    /// <summary>How far off forecast, rig, readings and habits may be, for the chance of holding.</summary>
    public ErrorSizes Errors { get; init; } = new();

    /// <summary>The chance of holding all nights that the person wants.</summary>
    public double WantedChance_frac { get; init; } = 0.9;

    /// <summary>The assumptions in plain words, for the report.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>When the run ends: as it is asked for, or with its weather where that ends sooner.</summary>
    public DateTimeOffset End
    {
        get
        {
            DateTimeOffset asked = Start.AddSeconds(new NightCalendar(this).Duration_s);
            return Legs.Count == 0 && Weather.Last < asked ? Weather.Last : asked;
        }
    }

    /// <summary>Place in its file of one of the rig's cylinders, from 0.</summary>
    /// <param name="cylinder">Its place in the rig, from 0.</param>
    public int FilePlaceOf(int cylinder) => FilePlaces.Count > cylinder ? FilePlaces[cylinder] : cylinder;

    /// <summary>The step unless another is requested. [s]</summary>
    public const double DefaultStep_s = 600;
}
