using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Forecasts;

/// <summary>Everything a forecast is computed from: the starting curves and the person's readings. The same model always gives the same forecast.</summary>
/// <param name="Scale">The scale on which it is reckoned; not ordinal.</param>
/// <param name="Series">The measures it rests on: one, or for the lag active and passive extension.</param>
/// <param name="ErrorCorrelation">Correlation of the errors of two measures read at the same visit.</param>
public sealed record ForecastModel(ErrorScale Scale, ImmutableArray<ForecastSeries> Series, double ErrorCorrelation)
{
    /// <summary>Standard error of what the instrument shows, on the scale of the model.</summary>
    public double Error
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < Series.Length; i++)
            {
                for (int j = 0; j < Series.Length; j++)
                {
                    sum += Series[i].Sign * Series[j].Sign * Series[i].Error * Series[j].Error * (i == j ? 1 : ErrorCorrelation);
                }
            }

            return Math.Sqrt(sum);
        }
    }

    /// <summary>A value in the unit as it stands on the scale of the model.</summary>
    public double ToScale(double value) => Scale == ErrorScale.Logarithmic ? Math.Log(value) : value;

    /// <summary>A value on the scale of the model in the unit.</summary>
    public double FromScale(double value) => Scale == ErrorScale.Logarithmic ? Math.Exp(value) : value;
}

/// <summary>One measure within a forecast.</summary>
/// <param name="Measure">Its id.</param>
/// <param name="Sign">How it enters what is forecast: 1, or -1 where it is taken away.</param>
/// <param name="Curve">The starting assumption.</param>
/// <param name="Error">Standard error of one reading yet to come, on the scale of the model.</param>
/// <param name="Seen">The person's readings; none is allowed.</param>
public sealed record ForecastSeries(string Measure, double Sign, RecoveryCurve Curve, double Error, ImmutableArray<SeenValue> Seen);

/// <summary>One reading within a forecast.</summary>
/// <param name="Week">Weeks since the operation, days as parts.</param>
/// <param name="Value">The value in the measure's unit.</param>
/// <param name="Error">Its standard error on the scale of the model, over 0.</param>
public sealed record SeenValue(double Week, double Value, double Error);
