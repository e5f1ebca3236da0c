using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using ColdSim.Physics.Units;

namespace ColdSim.Planning.Diagnosis;

/// <summary>How likely the readings of a cylinder are under each cause: the model's states, weighed over the fills, temperatures and rests
/// that are possible.</summary>
/// <param name="rig">The rig.</param>
internal sealed class CylinderLikelihood(DiagnosisRig rig)
{
    private const int Fills = 24;

    private const double LeastPossible = 1e-6;

    // Air of winter nights on which furnaces fail, where nobody says how cold it is: assumed. [°C] and part.
    private static readonly (double Air_C, double Part)[] Winter =
        [(-30, 0.05), (-22, 0.12), (-14, 0.22), (-6, 0.28), (2, 0.23), (10, 0.10)];

    // A furnace that is out has let the cylinder rest for a while, nobody knows how long; one that is too cold hardly has.
    private static readonly (double Rested_frac, double Part)[] Rests = [(0, 0.34), (0.5, 0.33), (1, 0.33)];
    private static readonly (double Rested_frac, double Part)[] ColdRests = [(0, 0.6), (0.25, 0.4)];

    private readonly CylinderExpectation _model = new(rig);
    private readonly double _air_Pa = StandardAtmosphere.Pressure_Pa(rig.Elevation_m);
    private readonly Dictionary<double, (double Fill_frac, double Part, double Drawn_K)[]> _fills = [];
    private readonly Dictionary<CylinderFault, double> _usual = [];

    // What can be at an air temperature, for each fault: the same for all readings, and most of the work.
    private readonly Dictionary<double, PossibleFill[]>[] _possible =
        [.. Enum.GetValues<CylinderFault>().Select(_ => new Dictionary<double, PossibleFill[]>())];

    /// <summary>What the model says of this rig.</summary>
    public CylinderExpectation Model => _model;

    /// <summary>The cylinder's fault behind a cause.</summary>
    public static CylinderFault FaultOf(Cause cause) => cause switch
    {
        Cause.TooCold => CylinderFault.TooCold,
        Cause.Empty => CylinderFault.Empty,
        Cause.ButaneLeft => CylinderFault.ButaneLeft,
        Cause.Overfilled => CylinderFault.Overfilled,
        _ => CylinderFault.None,
    };

    /// <summary>Likelihood of the readings under each fault, in the order of <see cref="CylinderFault"/>; the air counts as a
    /// reading.</summary>
    public double[] Of(CylinderReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        double[] all = new double[Enum.GetValues<CylinderFault>().Length];
        for (int i = 0; i < all.Length; i++)
        {
            CylinderFault fault = (CylinderFault)i;
            all[i] = readings.Air_K is { } air_K ? At(fault, air_K, readings) / Usual(fault) : OverWinter(fault, readings) / Usual(fault);
        }

        return all;
    }

    // How possible the fault is over a winter: what an air temperature is judged by.
    private double Usual(CylinderFault fault)
    {
        if (!_usual.TryGetValue(fault, out double usual))
            _usual[fault] = usual = Math.Max(1e-4, OverWinter(fault, new CylinderReadings()));
        return usual;
    }

    private double OverWinter(CylinderFault fault, CylinderReadings readings)
    {
        double sum = 0;
        foreach ((double air_C, double part) in Winter)
            sum += part * At(fault, air_C + ConversionFactors.ZeroCelsius_K, readings);
        return sum;
    }

    private double At(CylinderFault fault, double air_K, CylinderReadings readings)
    {
        double sum = 0;
        bool isUnread = !Enum.GetValues<Reading>().Any(readings.Has);
        (double Rested_frac, double Part)[] rests = fault == CylinderFault.TooCold ? ColdRests : Rests;
        foreach (PossibleFill fill in PossibleAt(air_K, fault))
        {
            if (isUnread)
            {
                sum += fill.Part;
                continue;
            }

            fill.Rested ??= [.. rests.Select(r => _model.Of(fault, air_K, fill.Fill_frac, fill.Drawn_K, r.Rested_frac))];
            double read = 0;
            for (int i = 0; i < rests.Length; i++)
                read += rests[i].Part * Read(readings, fill.Rested[i], air_K);
            sum += fill.Part * read;
        }

        return sum;
    }

    private PossibleFill[] PossibleAt(double air_K, CylinderFault fault)
    {
        Dictionary<double, PossibleFill[]> known = _possible[(int)fault];
        if (!known.TryGetValue(air_K, out PossibleFill[]? fills))
        {
            known[air_K] = fills =
            [
                .. FillsAt(air_K, fault).Select(f => (Fill: f, Possible: Possible(fault, air_K, f.Fill_frac, f.Drawn_K)))
                    .Where(f => f.Possible >= LeastPossible)
                    .Select(f => new PossibleFill(f.Fill.Fill_frac, f.Fill.Part * f.Possible, f.Fill.Drawn_K)),
            ];
        }

        return fills;
    }

    // Whether a cylinder at this fill and in this air can fail that way at all.
    private double Possible(CylinderFault fault, double air_K, double fill_frac, double drawn_K) => fault switch
    {
        CylinderFault.TooCold => ReadingErrors.Cumulative((_model.Fails_K - drawn_K) / ReadingErrors.Need_K),
        CylinderFault.ButaneLeft => ReadingErrors.Cumulative(
            (_model.Fails_Pa - _model.Of(fault, air_K, fill_frac, drawn_K, 0).Pressure_Pa) / (5 * ConversionFactors.Psi_Pa)),
        _ => 1,
    };

    private double Read(CylinderReadings r, CylinderState state, double air_K)
    {
        double likelihood = 1;
        if (r.Left_frac is { } left)
            likelihood *= ReadingErrors.OfLeft(left, state.Fill_frac);
        if (r.Pressure_Pa is { } p_Pa)
            likelihood *= ReadingErrors.OfPressure(p_Pa, state, _model.Fails_Pa, _air_Pa, Full_Pa(air_K)) * ConversionFactors.Psi_Pa;
        if (r.Wall_K is { } wall_K)
            likelihood *= ReadingErrors.OfWall(wall_K, state);
        else if (r.WallFeel is { } feel)
            likelihood *= ReadingErrors.OfFeel(feel, state, air_K);
        if (r.FrostLine_m is { } line_m)
            likelihood *= ReadingErrors.OfFrostLine(line_m, state, air_K, _model.Height_m);
        return likelihood;
    }

    private double Full_Pa(double air_K)
        => Math.Max(_model.Fails_Pa, PropaneSaturation.Pressure_Pa(Math.Clamp(air_K, SaturationTable.Lowest_K,
            SaturationTable.Highest_K)) - _air_Pa);

    // The fills that a fault leaves open, each as likely as the others, with the temperature that the recent use gives them.
    private IEnumerable<(double Fill_frac, double Part, double Drawn_K)> FillsAt(double air_K, CylinderFault fault)
    {
        if (fault == CylinderFault.Empty)
            return Span(0, 0.03, 3).Select(f => (f, 1.0 / 3, air_K));
        if (fault == CylinderFault.Overfilled)
            return Span(1.03, 1.15, 4).Select(f => (f, 0.25, _model.Drawn_K(air_K, 1)));
        if (!_fills.TryGetValue(air_K, out (double, double, double)[]? usual))
            _fills[air_K] = usual = [.. Span(0.05, 1, Fills).Select(f => (f, 1.0 / Fills, _model.Drawn_K(air_K, f)))];
        return usual;
    }

    // A fill that can be, how likely it is, and what would be seen of it at each rest once that is asked for.
    private sealed class PossibleFill(double fill_frac, double part, double drawn_K)
    {
        public double Fill_frac => fill_frac;

        public double Part => part;

        public double Drawn_K => drawn_K;

        public CylinderState[]? Rested { get; set; }
    }

    private static IEnumerable<double> Span(double from, double to, int count)
    {
        for (int i = 0; i < count; i++)
            yield return from + (to - from) * i / (count - 1);
    }
}
