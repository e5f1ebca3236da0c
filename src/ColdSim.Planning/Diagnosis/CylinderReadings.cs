namespace ColdSim.Planning.Diagnosis;

/// <summary>How the wall below the liquid's line feels beside something that is as cold as the air.</summary>
public enum WallFeel
{
    /// <summary>No colder.</summary>
    Same,

    /// <summary>Colder.</summary>
    Colder,

    /// <summary>Much colder.</summary>
    MuchColder,
}

/// <summary>What was read of the cylinder; null for what was not. SI units.</summary>
public sealed record CylinderReadings
{
    /// <summary>Air temperature. [K]</summary>
    public double? Air_K { get; init; }

    /// <summary>What is left, as a part of the legal filling.</summary>
    public double? Left_frac { get; init; }

    /// <summary>What a scale showed, cylinder and all, where <see cref="Left_frac"/> was weighed. [kg]</summary>
    public double? Scale_kg { get; init; }

    /// <summary>The empty mass that was taken off it: the stamped one, or what is usual for the size. [kg]</summary>
    public double? Tare_kg { get; init; }

    /// <summary>Gauge pressure. [Pa]</summary>
    public double? Pressure_Pa { get; init; }

    /// <summary>The wall's temperature, measured. [K]</summary>
    public double? Wall_K { get; init; }

    /// <summary>The wall's temperature, felt.</summary>
    public WallFeel? WallFeel { get; init; }

    /// <summary>Height of the line of frost above the body's lowest point; 0 where there is no line. [m]</summary>
    public double? FrostLine_m { get; init; }

    /// <summary>Whether a reading is there.</summary>
    public bool Has(Reading reading) => reading switch
    {
        Reading.Left => Left_frac is not null,
        Reading.Pressure => Pressure_Pa is not null,
        Reading.Wall => Wall_K is not null || WallFeel is not null,
        _ => FrostLine_m is not null,
    };

    /// <summary>One of the readings alone, with the air.</summary>
    public CylinderReadings Only(Reading reading) => new CylinderReadings { Air_K = Air_K }.With(reading, this);

    /// <summary>These with one of another's.</summary>
    public CylinderReadings With(Reading reading, CylinderReadings other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return reading switch
        {
            Reading.Left => this with { Left_frac = other.Left_frac, Scale_kg = other.Scale_kg, Tare_kg = other.Tare_kg },
            Reading.Pressure => this with { Pressure_Pa = other.Pressure_Pa },
            Reading.Wall => this with { Wall_K = other.Wall_K, WallFeel = other.WallFeel },
            _ => this with { FrostLine_m = other.FrostLine_m },
        };
    }
}
