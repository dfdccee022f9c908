// What is said of a practice weld, in English: a sentence of why for each finding, with its
// numbers, and what each mistake does to a joint. Screens say the same by code in the user's
// language. It explains; the verdict and the bend test have judged.
#pragma once

#include "core/practice/practice_score.h"

#include <string>
#include <vector>

namespace seamclock {

/// "Melt left when the faces met: 0.4 mm, by the plan 1.3 mm."; "Soak was under pressure: 0.09
/// N/mm², at most 0.01."
std::string lapseSentence(const LapseFinding& finding);
/// Why that matters, whatever the numbers: one or two sentences.
std::string whyItMatters(Lapse lapse);
/// "The plate is too cold."
std::string wrongSentence(Wrong wrong);
std::string bendSentence(BendReason reason);
std::string readingSentence(const ReadingError& reading);
std::string orderSentence(const OrderError& error);
std::string reactionSentence(const CueReaction& reaction);
/// Skin and melt as the faces met, what was left, the least pressure as it froze, the release;
/// beside each what the steady hand had.
std::vector<std::string> jointSentences(const JointPhysics& made, const JointPhysics& planned);
/// What pressure and freezing left of the melt that the faces met with, the mean along the seam
/// [mm]; 0 where they never met.
double meltLeftMm(const BenchView& end);
/// The weld plane where it is hottest [°C].
double weldPlaneC(const BenchView& bench);

/// Everything, by paragraphs.
std::vector<std::string> practiceWords(const PracticeScore& score);

/// "Practice can't teach the feel of a wheel …"
std::string whatPracticeCantTeach();

} // namespace seamclock
