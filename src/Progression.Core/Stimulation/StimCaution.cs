using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>A figure beyond a published limit, or settings that defeat their purpose.</summary>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Text">What it means, in a sentence with the figure.</param>
/// <param name="Limit">The threshold, with its source.</param>
/// <param name="Value">The figure, in the unit of the limit.</param>
public sealed record StimCaution(Severity Severity, string Text, Limit Limit, double Value);
