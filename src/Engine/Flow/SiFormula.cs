using Runnel.Engine.Figures;

namespace Runnel.Engine.Flow;

/// <summary>Formulas of flow are written in SI and described in a grower's units.</summary>
internal static class SiFormula
{
    /// <summary>A formula written in SI, made to take and give the units it describes, and to refuse what lies outside its ranges.</summary>
    public static Formula InItsUnits(this Formula si) => si with
    {
        Compute = x =>
        {
            var values = new double[si.Inputs.Count];
            for (var i = 0; i < values.Length; i++)
            {
                var input = si.Inputs[i];
                values[i] = input.Unit.ToSi(Range.Within(x[i], input.Min, input.Max, input.Id));
            }
            return si.Output.Unit.FromSi(si.Compute(values));
        },
    };
}
