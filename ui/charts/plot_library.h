#pragma once

// QCustomPlot uses Qt's keyword macros, which the rest of the program does without (they clash
// with names of other libraries). They exist only while its header is read. That header costs
// ten seconds of compile time: include this in as few .cpp files as can be, and in no header.
#include <QObject>

#define signals Q_SIGNALS
#define slots Q_SLOTS
#define foreach Q_FOREACH
#include <qcustomplot.h>
#undef signals
#undef slots
#undef foreach
