using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Frame;

/// <summary>What the check of a stand says to the grower.</summary>
internal static class StandFindings
{
    private const string Rule = "National Design Specification for Wood Construction, allowable stress design; see docs/science/frame.md";

    /// <summary>Strength from half of what is allowed, sag only beyond it: nothing breaks by sagging.</summary>
    public static void Judge(PieceCheck piece, List<Finding> findings)
    {
        if (piece.Strength is { } worst && worst.Ratio.Si > StandCheck.HaveItChecked)
        {
            var over = worst.Ratio.Si > StandCheck.Overloaded;
            findings.Add(new(
                over ? "stand.overloaded" : "stand.have-it-checked", over ? Severity.Grave : Severity.Warning, piece.Lumber.Name, Saw(piece, worst),
                Said.Of($"under {Amount.Of(100 * StandCheck.HaveItChecked, Units.Percent)}; Runnel does not call more than that fine"),
                (over, worst.Mode) switch
                {
                    (false, _) => "Have it checked by a structural engineer or an experienced carpenter before you fill it, or make it stronger.",
                    (true, "compression") => "Do not fill it. Thicker or shorter legs, or more of them; then have a structural engineer look at it.",
                    (true, _) => "Do not fill it. Deeper pieces, a shorter free span (another leg in the middle), or two side by side; then have a structural engineer look at it.",
                },
                $"stand/{piece.Lumber.Name}", Rule));
        }
        if (piece.Checks.FirstOrDefault(c => c.Mode == "sag") is { } sag && sag.Ratio.Si > StandCheck.Overloaded)
        {
            findings.Add(new(
                "stand.sags", Severity.Warning, piece.Lumber.Name, Saw(piece, sag), Said.Of($"at most {new Amount(sag.Allowed.Si, Units.Millimetre)}, span/240"),
                "Deeper pieces or a shorter free span: a bed that is not level floods unevenly, and its siphon or overflow misbehaves.", $"stand/{piece.Lumber.Name}", Rule));
        }
    }

    private static Said Saw(PieceCheck piece, Utilisation use) => Said.Of(
        $"{new Amount(piece.Load.Si, Units.Kilogram)} on one piece: {Word(use.Mode)} at {new Amount(use.Ratio.Si, Units.Percent)} of what is allowed ({piece.Values.Name}{(piece.Lumber.Wet ? ", wet" : "")})");

    public static Finding CarriesNothing(Lumber lumber) => new(
        "stand.carries-nothing", Severity.Note, lumber.Name, $"a {lumber.Use.ToString().ToLowerInvariant()} that carries no vessel", "carries: with the names of the vessels on it",
        "Add carries: to the piece; until then it is not checked.", $"stand/{lumber.Name}/carries");

    public static Finding UnknownSize(Lumber lumber) => new(
        "stand.size-unknown", Severity.Warning, lumber.Name, $"“{lumber.Size}” is no size that Runnel can read", "thickness x depth: 2x4, or 45 x 90 mm",
        "Write the size with its unit; until then the piece is not checked.", $"stand/{lumber.Name}/size");

    public static Finding Board(Lumber lumber, LumberSize size) => new(
        "stand.board", Severity.Warning, lumber.Name, Said.Of($"a board {new Amount(size.Thickness, Units.Millimetre)} thick that carries weight"),
        Said.Of($"lumber at least {Amount.Of(35, Units.Millimetre)} thick, which has a structural grade"),
        "Take framing lumber for what carries. Runnel has no strength for boards and does not check them.", $"stand/{lumber.Name}/size", "NDS Supplement, table 4A: lumber 2 to 4 in thick (from memory)");

    public static Finding TooSlender(Lumber lumber, Figure slenderness) => new(
        "stand.too-slender", Severity.Grave, lumber.Name, Said.Of($"slenderness of {new Amount(slenderness.Si, Units.One)}"), Said.Of($"at most {Amount.Of(Beam.MaxSlenderness, Units.One)}"),
        lumber.Use == LumberUse.Leg
            ? "Thicker legs, or shorter ones: it would buckle. Do not fill it."
            : "A thicker piece or a shorter free span: it would topple sideways. Do not fill it.",
        $"stand/{lumber.Name}/size", "NDS 3.3.3 and 3.7.1");

    public static Finding OutOfRange(Lumber lumber, RangeFault fault) => new(
        "stand.out-of-range", Severity.Warning, lumber.Name, Said.Of($"{fault.Input.Label} of {Amount.Of(fault.Value, fault.Input.Unit)}"),
        Said.Of($"{Amount.Of(fault.Input.Min, fault.Input.Unit)} to {Amount.Of(fault.Input.Max, fault.Input.Unit)}, where the rule holds"),
        "The piece is not checked. Look at its length and at what it carries.", $"stand/{lumber.Name}");

    /// <summary>Vessels above the floor that no checked piece carries.</summary>
    public static void Unchecked(LoopPlan plan, IReadOnlyDictionary<string, Figure> masses, List<Finding> findings)
    {
        var carried = plan.Stand.Values.Where(l => l.Use is LumberUse.Rail or LumberUse.Joist).SelectMany(l => l.Carries).ToHashSet(StringComparer.Ordinal);
        var stoodUpon = plan.Stand.Values.Where(l => l.Use == LumberUse.Leg).SelectMany(l => l.Carries).ToHashSet(StringComparer.Ordinal);
        foreach (var vessel in plan.Vessels.Values.Where(v => v.AboveFloor is { Likely: > 0.05 } && masses.ContainsKey(v.Name)))
        {
            var mass = new Amount(masses[vessel.Name].Si, Units.Kilogram);
            var missing = (carried.Contains(vessel.Name), stoodUpon.Contains(vessel.Name)) switch
            {
                (true, true) => null,
                (true, false) => "legs",
                (false, true) => "rails or joists",
                (false, false) => "rails and legs",
            };
            if (missing is not null)
            {
                findings.Add(new(
                    "stand.unchecked", Severity.Note, vessel.Name,
                    Said.Of($"{mass} when full, {new Amount(vessel.AboveFloor.Likely, Units.Centimetre)} above the floor, and no {missing} in the plan that carry it"),
                    "what it stands on, with use: and carries: under stand:",
                    "Runnel has not checked what holds it up. Add the pieces, or have the stand, wall or blocks looked at.", $"vessels/{vessel.Name}/above floor"));
            }
        }
    }

    public static Finding Caution(int pieces) => new(
        "stand.caution", Severity.Note, "stand",
        pieces == 0 ? "a stand that Runnel has not checked" : "a check of single pieces under an even, steady load",
        "joints that do not rest on screws alone, diagonal braces or plywood against sway, level feet, sound graded wood, a floor that bears it",
        "Set rails on top of legs, not on screws in their sides. Fill it slowly, keep people away while you do, and look for movement. Children climb. A local structural engineer and code decide.",
        "stand", Rule);

    private static string Word(string mode) => mode switch
    {
        "sag" => "sag after years",
        "bearing" => "crushing at the supports",
        "compression" => "compression and buckling",
        _ => mode,
    };
}
