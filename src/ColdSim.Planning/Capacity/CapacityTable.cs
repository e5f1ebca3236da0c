using ColdSim.Model;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Engine;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;
using ColdSim.Planning.Quick;
using ColdSim.Planning.Search;

namespace ColdSim.Planning.Capacity;

/// <summary>What a cylinder can give at one air temperature and fill, for one time. SI units.</summary>
/// <param name="Time">The time it is for.</param>
/// <param name="Low_K">Air; of a night its low. [K]</param>
/// <param name="Fill_frac">Part of the legal filling at the beginning.</param>
/// <param name="Contents_kg">The same as a mass. [kg]</param>
/// <param name="Draw_W">The capacity, as gross heat; 0 where nothing is fed for so long. [W]</param>
/// <param name="End">What would fail a little more.</param>
/// <param name="Liquid_K">Liquid at the end; NaN where nothing is fed. [K]</param>
/// <param name="Left_kg">Gas left at the end; NaN where nothing is fed. [kg]</param>
/// <param name="Ledger">How well energy and mass close in its run; null where nothing was run to the end.</param>
public sealed record CapacityCell(
    CapacityTime Time, double Low_K, double Fill_frac, double Contents_kg, double Draw_W, CapacityEnd End, double Liquid_K, double Left_kg, LedgerBalance? Ledger)
{
    /// <summary>The capacity if the regulator gives nothing below its minimum inlet, which its plate alone promises; no more than the other. [W]</summary>
    public double AboveMinimumInlet_W { get; init; } = Draw_W;
}

/// <summary>Capacities of one cylinder: by time, air temperature and fill.</summary>
public sealed record CapacityTable
{
    /// <summary>What was asked.</summary>
    public required CapacityQuestion Question { get; init; }

    /// <summary>The cells: by time, then by air temperature, then by fill, each in the order asked for.</summary>
    public required IReadOnlyList<CapacityCell> Cells { get; init; }

    /// <summary>Minimum inlet of the regulator. [Pa gauge]</summary>
    public double MinimumInlet_Pa => Question.RigAt(1).MinimumInlet_Pa;

    /// <summary>The cell at places of the question's lists.</summary>
    /// <param name="time">Place of the time.</param>
    /// <param name="low">Place of the air temperature.</param>
    /// <param name="fill">Place of the fill.</param>
    public CapacityCell At(int time, int low, int fill) => Cells[(time * Question.Lows_K.Count + low) * Question.Fills_frac.Count + fill];

    /// <summary>Works out every cell, side by side; what comes out does not depend on how many at once.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="finished">Receives the number of cells that are done; may be called from several threads at once.</param>
    /// <param name="workers">How many cells at once; null takes one for each processor.</param>
    /// <param name="cancel">Stops all runs.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static CapacityTable Of(CapacityQuestion question, IProgress<int>? finished = null, int? workers = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        int fills = question.Fills_frac.Count, lows = question.Lows_K.Count, done = 0;
        CapacityCell[] cells = ParallelMap.Of(
            question.Times.Count * lows * fills,
            i =>
            {
                CapacityCell cell = Cell(question, question.Times[i / (lows * fills)], question.Lows_K[i / fills % lows], question.Fills_frac[i % fills], cancel);
                finished?.Report(Interlocked.Increment(ref done));
                return cell;
            },
            workers,
            cancel);
        return new CapacityTable { Question = question, Cells = cells };
    }

    private const double Ample_Pa = 500_000, Ample_K = ConversionFactors.ZeroCelsius_K;

    // The springs of a regulator go on below its minimum inlet; how much of the draw hangs on that is what a second search finds.
    private static CapacityCell Cell(CapacityQuestion question, CapacityTime time, double low_K, double fill_frac, CancellationToken cancel)
    {
        Rig rig = question.RigAt(fill_frac), shutting = rig with { Regulator = rig.Regulator with { ShutsBelowMinimum = true } };
        CapacityCell cell = Cell(question, rig, time, low_K, fill_frac, cancel);
        double end_Pa = cell.Draw_W > 0 ? PropaneSaturation.Pressure_Pa(cell.Liquid_K) - StandardAtmosphere.SeaLevel_Pa : 0;
        return end_Pa >= rig.MinimumInlet_Pa ? cell : cell with { AboveMinimumInlet_W = Cell(question, shutting, time, low_K, fill_frac, cancel).Draw_W };
    }

    private static CapacityCell Cell(CapacityQuestion question, Rig rig, CapacityTime time, double low_K, double fill_frac, CancellationToken cancel)
    {
        double contents_kg = rig.Cylinders[0].Contents_kg;
        (WeatherSeries weather, DateTimeOffset start) = CapacityWeather.Of(question, time, low_K);
        int row = 0;
        WeatherSample steady = weather.At((start - weather.First).TotalSeconds, ref row);
        EndlessDraw endless = EndlessDraw.For(rig, steady, contents_kg, DrawConditions.UsualDelivery_Pa);
        if (time.Kind == CapacityTimeKind.WithoutEnd)
        {
            return new CapacityCell(
                time, low_K, fill_frac, contents_kg, endless.Draw_W, endless.ByRegulator ? CapacityEnd.Regulator : CapacityEnd.TooCold, endless.Liquid_K,
                endless.Draw_W > 0 ? contents_kg : double.NaN, null);
        }

        DrawConditions conditions = new() { Rig = rig, Weather = weather, Start = start };
        LastingDraw draw = LastingDraw.For(conditions, time.Time_s, Guess_W(rig, endless, contents_kg, steady.Air_K, time.Time_s), Most_W(rig, steady.Pressure_Pa), cancel);
        return new CapacityCell(time, low_K, fill_frac, contents_kg, draw.Draw_W, draw.End, draw.Liquid_K, draw.Left_kg, draw.Ledger);
    }

    // With its inlet at a pressure at which only its second stage counts.
    private static double Most_W(Rig rig, double air_Pa)
        => rig.Gas.PlateHeatingValue_J_kg * new TwoStageRegulator(rig.Regulator, rig.Gas.PlateHeatingValue_J_kg).Flow_kg_s(
            DrawConditions.UsualDelivery_Pa, new FeedPressures(air_Pa + Ample_Pa, 0, Ample_K), air_Pa);

    // What flows in, and the warmth that is stored above the liquid's end; never more than there is.
    private static double Guess_W(Rig rig, EndlessDraw endless, double contents_kg, double air_K, double time_s)
    {
        double heating_J_kg = rig.Gas.PlateHeatingValue_J_kg, all_W = contents_kg * heating_J_kg / time_s;
        if (!(endless.Draw_W > 0)) return 0.1 * all_W;
        CylinderBody body = new(rig.Cylinders[0]);
        CylinderContents contents = body.Contents(contents_kg, endless.Liquid_K);
        double stored_J = (contents.HeatCapacity_J_K + body.ShellHeat_J_K) * Math.Max(0, air_K - endless.Liquid_K);
        return Math.Min(0.95 * all_W, 0.85 * endless.Draw_W + 0.9 * stored_J / contents.DrawHeat_J_kg * heating_J_kg / time_s);
    }
}

/// <summary>The weather of a capacity: air that stays as it is, or falls to the low of a night.</summary>
internal static class CapacityWeather
{
    private static readonly DateTimeOffset Noon = new(2001, 1, 14, 12, 0, 0, TimeSpan.Zero);

    // So much longer than the time that is asked for, so that a search can look on.
    private const double Longest_h = 24 * 8;
    private const double Dusk_h = 4;

    public static (WeatherSeries Weather, DateTimeOffset Start) Of(CapacityQuestion question, CapacityTime time, double low_K)
    {
        WeatherDefaults air = question.Air;
        return time.Kind == CapacityTimeKind.Night
            ? (new WeatherSeries(NightShape.Rows(Noon, low_K, low_K + QuickNight.Swing_K), air, new()), Noon.AddHours(Dusk_h))
            : (new WeatherSeries([new(Noon, low_K), new(Noon.AddHours(Longest_h), low_K)], air, new()), Noon);
    }
}
