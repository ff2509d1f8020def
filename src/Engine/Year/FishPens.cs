using Runnel.Engine.Fish;
using Runnel.Engine.Numerics;
using static Runnel.Engine.Year.YearConstants;

namespace Runnel.Engine.Year;

/// <summary>The batches of fish of a run: number, weight and what is in their guts; feed in, waste out.</summary>
/// <remarks>Between visits number and feed are constant within each hour, so digestion and growth are solved exactly.</remarks>
internal sealed class FishPens
{
    private readonly FishStock[] _stock;
    private readonly double[] _gut;
    private readonly double[] _ration;
    private readonly double[] _digestion;
    private readonly double[] _rest;
    private readonly double[] _left;
    private readonly double[] _leftStep;

    public FishPens(IReadOnlyList<FishStock> stock)
    {
        _stock = [.. stock];
        Number = new double[stock.Count];
        Weight = new double[stock.Count];
        Eaten = new double[stock.Count];
        _gut = new double[stock.Count];
        _ration = new double[stock.Count];
        _digestion = new double[stock.Count];
        _rest = new double[stock.Count];
        _left = new double[stock.Count];
        _leftStep = new double[stock.Count];
    }

    public double[] Number { get; }

    /// <summary>Mean weight, g.</summary>
    public double[] Weight { get; }

    /// <summary>Feed eaten by each batch so far, g.</summary>
    public double[] Eaten { get; }

    /// <summary>Given off over the last step, g/h.</summary>
    public double Excreted { get; private set; }

    /// <inheritdoc cref="Excreted"/>
    public double SolidsDry { get; private set; }

    /// <inheritdoc cref="Excreted"/>
    public double SolidsNitrogen { get; private set; }

    /// <summary>Feed that was digested over the last step, g/h.</summary>
    public double Digested { get; private set; }

    /// <summary>Oxygen used at rest, g/h at 20 °C.</summary>
    public double RestDemand { get; private set; }

    /// <summary>Live mass, kg.</summary>
    public double Mass
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Number.Length; i++)
            {
                sum += Number[i] * Weight[i];
            }
            return sum / 1000;
        }
    }

    /// <summary>Feed eaten by all so far, g.</summary>
    public double EatenByAll
    {
        get
        {
            var sum = 0.0;
            foreach (var eaten in Eaten)
            {
                sum += eaten;
            }
            return sum;
        }
    }

    /// <summary>Nitrogen held in fish and guts, g.</summary>
    public double Nitrogen
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Number.Length; i++)
            {
                sum += Number[i] * Weight[i] * FishNitrogen + _gut[i] * FeedNitrogen(i);
            }
            return sum;
        }
    }

    public FishStock Stock(int i) => _stock[i];

    public void Put(int i) => (Number[i], Weight[i], _gut[i]) = (_stock[i].Number, _stock[i].Weight, 0);

    /// <summary>Takes a batch out. What is still in the guts goes with it: its nitrogen, g, is returned.</summary>
    public double TakeOut(int i)
    {
        var nitrogen = Number[i] * Weight[i] * FishNitrogen + _gut[i] * FeedNitrogen(i);
        (Number[i], _gut[i], _ration[i], _rest[i]) = (0, 0, 0, 0);
        return nitrogen;
    }

    /// <summary>Deaths since the last visit; nitrogen that leaves with the dead fish, g.</summary>
    public double Bury(int i)
    {
        var dead = Number[i] * _stock[i].Mortality;
        Number[i] -= dead;
        return dead * Weight[i] * FishNitrogen;
    }

    /// <summary>The day's feed, from weight, temperature and oxygen at the visit.</summary>
    public void SetRation(int i, double temperature, double oxygen)
    {
        var stock = _stock[i];
        var response = TemperatureResponse.Beta(Math.Clamp(temperature, -20, 60), stock.Least, stock.Best, stock.Most);
        var root = Math.Cbrt(Weight[i]) + stock.Growth / 100 * stock.Best * response;
        var gain = root * root * root - Weight[i];
        var appetite = Math.Clamp(2 * oxygen / stock.Oxygen - 1, 0, 1);
        _ration[i] = Math.Min(gain * stock.FeedConversion, stock.MostRation * Weight[i]) * appetite * Number[i];
        _digestion[i] = Digestion * Math.Pow(RoutineRespiration.Theta, Math.Clamp(temperature, 0, 40) - stock.Best);
        _leftStep[i] = 0;
        // Routine respiration at the day's weight, brought to 20 °C; within the day only the temperature moves it.
        _rest[i] = Number[i] * Weight[i] / 1000 * RoutineRespiration.Usual / 1000 * Math.Pow(Weight[i] / 100, RoutineRespiration.WeightPower)
            * Math.Pow(RoutineRespiration.Theta, 20 - stock.Best);
    }

    /// <summary>Cuts the day's feed of all batches alike so that together they get no more than this, g.</summary>
    public void Limit(double most)
    {
        var sum = 0.0;
        foreach (var ration in _ration)
        {
            sum += ration;
        }
        for (var i = 0; i < _ration.Length && sum > most; i++)
        {
            _ration[i] *= most / sum;
        }
    }

    /// <summary>Feeds, digests and grows over a step; returns the nitrogen fed, g.</summary>
    /// <param name="step">Length, h.</param>
    /// <param name="share">Share of the day's feed that is given each hour during the step.</param>
    public double Step(double step, double share)
    {
        var (excreted, solids, solidsNitrogen, digestedSum, rest, fed) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < Number.Length; i++)
        {
            if (Number[i] <= 0)
            {
                continue;
            }
            var feed = _ration[i] * share;
            if (_leftStep[i] != step)
            {
                (_left[i], _leftStep[i]) = (Math.Exp(-_digestion[i] * step), step);
            }
            var left = _left[i];
            var gut = _gut[i] * left + feed / _digestion[i] * (1 - left);
            var digested = _gut[i] + feed * step - gut;
            _gut[i] = gut;
            Eaten[i] += feed * step;
            var nitrogen = digested * FeedNitrogen(i);
            fed += feed * step * FeedNitrogen(i);
            // No more nitrogen stays than nine tenths of what was fed, whatever conversion is claimed.
            var gain = Math.Min(digested / _stock[i].FeedConversion, 0.9 * nitrogen / FishNitrogen);
            Weight[i] += gain / Number[i];
            var waste = nitrogen - gain * FishNitrogen;
            excreted += DissolvedShare * waste;
            solidsNitrogen += waste - DissolvedShare * waste;
            solids += SolidsEachFeed * digested;
            digestedSum += digested;
            rest += _rest[i];
        }
        (Excreted, SolidsDry, SolidsNitrogen) = (excreted / step, solids / step, solidsNitrogen / step);
        (Digested, RestDemand) = (digestedSum / step, rest);
        return fed;
    }

    private double FeedNitrogen(int i) => _stock[i].Protein * ProteinNitrogen;
}
