using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Plan;

namespace Runnel.Screens.Views;

/// <summary>One part of the build list with its price as a figure.</summary>
public sealed record PartRow(PartLine Line, Figure? Price)
{
    /// <summary>The row of a line.</summary>
    public static PartRow Of(PartLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var price = line is { Cost: { } cost, Price: { Condition: not Condition.Owned } asked } ? PriceUnder(cost, asked.Amount.From.Path) : null;
        return new(line, price);
    }

    private static Figure? PriceUnder(Figure figure, string path)
    {
        foreach (var step in Working.Steps(figure))
        {
            if (step.How is Given given && given.Estimate.From.Path == path)
            {
                return step;
            }
            // A price per pack or measure stands one step further down.
            if (step.How is Quotient && PriceUnder(step, path) is { } found)
            {
                return found;
            }
        }
        return null;
    }
}
