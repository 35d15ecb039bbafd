using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>A figure beyond a published limit, or settings that defeat their purpose.</summary>
/// <param name="Id">The id of the limit, or a permanent id of its own.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Text">What it means, in a sentence with the figure.</param>
/// <param name="Limit">The threshold in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit of both numbers.</param>
/// <param name="Value">The figure.</param>
/// <param name="Source">Where the threshold comes from and how well it is founded.</param>
public sealed record StimCaution(string Id, Severity Severity, string Text, double Limit, string Unit, double Value, Source Source);
