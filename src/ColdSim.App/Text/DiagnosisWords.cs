using ColdSim.Planning.Diagnosis;

namespace ColdSim.App.Text;

/// <summary>What is said of signs, readings and tests.</summary>
internal static class DiagnosisWords
{
    /// <summary>The first question of all.</summary>
    public const string SmellQuestion = "Is there a smell of gas?";

    /// <summary>The second.</summary>
    public const string CarbonMonoxideQuestion = "Does a CO alarm sound, or is anybody dizzy, sick, with a headache?";

    /// <summary>The question for what no test tells.</summary>
    public const string AirQuestion = "How cold is it outside, such as -8 °F?";

    /// <summary>The question for the recent use.</summary>
    public const string UseQuestion = "How much did the furnace burn in the last eight hours: light, usual (half of the time), hard?";

    /// <summary>The option that takes what a test shows.</summary>
    public static string OptionOf(NextTest test) => test.Sign switch
    {
        Sign.OpenedFast or Sign.Swapped or Sign.Filled => "did",
        { } sign => DiagnosisFigures.Signs[sign].Key,
        null => DiagnosisFigures.Readings[test.Reading!.Value].Key,
    };

    /// <summary>A test as a question to somebody at a terminal.</summary>
    public static string QuestionOf(NextTest test) => test.Sign switch
    {
        Sign.Stove => "Light the stove. How does it burn: normal, weak, fades, none, flares?",
        Sign.Fan => "How does the furnace's fan run: full, slow, none?",
        Sign.Furnace => "How far does the furnace get: silent, fan-only, clicks (no flame), seconds, minutes, burns (too little heat)?",
        Sign.Volts => "What is the voltage at the furnace's board while the fan runs?",
        Sign.Regulator => "Is the regulator dry or iced?",
        Sign.OpenedFast or Sign.Swapped or Sign.Filled => "What was just done: opened-fast (the valve), swapped, filled, nothing? Several "
            + "with commas.",
        Sign.Vents => "Look at the furnace's vents outside: clear or snow?",
        Sign.Return => "Look at the return grille and the ducts inside: clear or blocked?",
        Sign.Load => "Does it fail alone, or only together with other burners?",
        Sign.ByDay => "In the warmth of the day, is it the same or better?",
        Sign.Reopened => "Shut all burners and the valve, wait five minutes, open slowly. Has it helped: helped, no?",
        Sign.Reset => "Switch the furnace off for a minute and on again, once. Has it helped: helped, no?",
        Sign.Gas => "What was bought: propane, mixed, butane?",
        Sign.Elevation => "How high up is it, such as 7,000 ft?",
        _ => test.Reading switch
        {
            Reading.Left => "Weigh the cylinder, or read its gauge. How much is left, such as 30 % or 7 lb?",
            Reading.Pressure => "What does a pressure gauge at the cylinder show, such as 12 psi?",
            Reading.Wall => "Feel the cylinder's wall low down. Beside the air, is it the same, colder, much-colder?",
            _ => "Is there a line of frost on the cylinder: none, or how high, such as 5 in?",
        },
    };

    /// <summary>A test as something to do.</summary>
    public static string ToDoOf(NextTest test) => test.Sign switch
    {
        Sign.Stove => "Light the stove and watch it for a minute.",
        Sign.Fan => "Listen to the furnace's fan.",
        Sign.Furnace => "Watch one start of the furnace: fan, clicks, flame.",
        Sign.Volts => "Measure the voltage at the furnace's board while the fan runs.",
        Sign.Regulator => "Look whether the regulator is iced.",
        Sign.OpenedFast => "Ask who opened the valve whether it was opened fast.",
        Sign.Swapped => "Ask whether the cylinder was swapped.",
        Sign.Filled => "Ask whether it was filled within two days.",
        Sign.Vents => "Look at the furnace's vents outside, for snow and ice.",
        Sign.Return => "Look whether the return grille or a duct is covered.",
        Sign.Load => "Shut the other burners and try the furnace alone.",
        Sign.ByDay => "Remember whether it went better in the warmth of the day.",
        Sign.Reopened => "Shut every burner and the valve, wait five minutes, open slowly.",
        Sign.Reset => "Switch the furnace off for a minute and on again, once.",
        Sign.Gas => "Look on the bill which gas it is.",
        Sign.Elevation => "Look up how high you are.",
        _ => test.Reading switch
        {
            Reading.Left => "Weigh the cylinder.",
            Reading.Pressure => "Read a pressure gauge at the cylinder.",
            Reading.Wall => "Feel the cylinder's wall low down.",
            _ => "Look for a line of frost on the cylinder.",
        },
    };

    /// <summary>The same with the options of the command that take what it shows.</summary>
    public static string ToDoWithOption(NextTest test)
    {
        string options = test.Reading == Reading.Left ? "--left, --scale" : $"--{OptionOf(test)}";
        return $"{ToDoOf(test)[..^1]} ({options}).";
    }

    /// <summary>What is known, in a few words.</summary>
    public static string Of(Evidence evidence, DiagnosisQuestion question, UnitStyle units) => evidence.Sign switch
    {
        Sign.Stove => evidence.State switch
        {
            0 => "the stove burns normally",
            1 => "the stove burns weakly",
            2 => "the stove fades",
            3 => "the stove does not burn",
            _ => "the stove flares"
        },
        Sign.Fan => evidence.State switch { 0 => "the fan runs at full speed", 1 => "the fan is slow", _ => "the fan does not run" },
        Sign.Furnace => evidence.State switch
        {
            0 => "the furnace does nothing",
            1 => "the fan runs without a click",
            2 => "it clicks without a flame",
            3 => "it burns for seconds",
            4 => "it burns for minutes",
            _ => "it burns on",
        },
        Sign.Volts => $"{SignStates.Of(Sign.Volts)[evidence.State]} at the board",
        Sign.Regulator => evidence.State == 0 ? "the regulator is dry" : "the regulator is iced",
        Sign.OpenedFast => evidence.State == 0 ? "the valve was opened fast" : "the valve was not opened fast",
        Sign.Swapped => evidence.State == 0 ? "it was just swapped" : "it was not swapped",
        Sign.Filled => evidence.State == 0 ? "it was just filled" : "it was not just filled",
        Sign.Vents => evidence.State == 0 ? "the vents are clear" : "snow at the vents",
        Sign.Return => evidence.State == 0 ? "the return is clear" : "the return is blocked",
        Sign.Load => evidence.State == 0 ? "it fails alone too" : "it fails beside other burners only",
        Sign.ByDay => evidence.State == 0 ? "it is no better by day" : "it is better by day",
        Sign.Reopened => evidence.State == 0 ? "opening slowly helped" : "opening slowly did not help",
        Sign.Reset => evidence.State == 0 ? "off and on helped" : "off and on did not help",
        Sign.Gas => $"the gas is {SignStates.Of(Sign.Gas)[evidence.State]}",
        Sign.Elevation => $"the height is {SignStates.Of(Sign.Elevation)[evidence.State]}",
        _ => OfReading(evidence.Reading, question.Readings, units),
    };

    private static string OfReading(Reading? reading, CylinderReadings r, UnitStyle units) => reading switch
    {
        Reading.Left => $"{UnitStyle.Number(100 * r.Left_frac!.Value, 0)} % is left",
        Reading.Pressure => $"the pressure is {units.Pressure(r.Pressure_Pa!.Value)}",
        Reading.Wall => r.Wall_K is { } wall_K ? $"the wall is at {units.WholeTemperature(wall_K)}"
            : r.WallFeel switch
            {
                WallFeel.Same => "the wall is as warm as the air",
                WallFeel.Colder => "the wall is colder than the air",
                _ => "the wall is much colder than the air"
            },
        Reading.FrostLine => r.FrostLine_m > 0 ? "a line of frost" : "no line of frost",
        _ => $"air at {units.WholeTemperature(r.Air_K!.Value)}",
    };
}
