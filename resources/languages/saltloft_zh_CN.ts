<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>ActionWords</name>
    <message>
        <source>new person %1</source>
        <translation>新增人员 %1</translation>
    </message>
    <message>
        <source>person %1 changed</source>
        <translation>人员 %1 已更改</translation>
    </message>
    <message>
        <source>new chamber %1</source>
        <translation>新增风干室 %1</translation>
    </message>
    <message>
        <source>chamber %1 changed</source>
        <translation>风干室 %1 已更改</translation>
    </message>
    <message>
        <source>new sensor %1</source>
        <translation>新增传感器 %1</translation>
    </message>
    <message>
        <source>sensor %1 changed</source>
        <translation>传感器 %1 已更改</translation>
    </message>
    <message>
        <source>new instrument %1</source>
        <translation>新增仪器 %1</translation>
    </message>
    <message>
        <source>instrument %1 changed</source>
        <translation>仪器 %1 已更改</translation>
    </message>
    <message>
        <source>calibration check of %1</source>
        <translation>校验 %1</translation>
    </message>
    <message>
        <source>new recipe %1</source>
        <translation>新增配方 %1</translation>
    </message>
    <message>
        <source>new version of recipe %1</source>
        <translation>配方 %1 的新版本</translation>
    </message>
    <message>
        <source>recipe renamed to %1</source>
        <translation>配方改名为 %1</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>导入 %1</translation>
    </message>
    <message>
        <source>recipe %1 put away</source>
        <translation>配方 %1 已收起</translation>
    </message>
    <message>
        <source>new ingredient %1</source>
        <translation>新增配料 %1</translation>
    </message>
    <message>
        <source>ingredient %1 changed</source>
        <translation>配料 %1 已更改</translation>
    </message>
    <message>
        <source>new lot %1</source>
        <translation>新增批号 %1</translation>
    </message>
    <message>
        <source>lot %1 changed</source>
        <translation>批号 %1 已更改</translation>
    </message>
    <message>
        <source>new batch %1</source>
        <translation>新建批次 %1</translation>
    </message>
    <message>
        <source>batch %1 changed</source>
        <translation>批次 %1 已更改</translation>
    </message>
    <message>
        <source>new piece %1</source>
        <translation>新增肉块 %1</translation>
    </message>
    <message>
        <source>piece %1 changed</source>
        <translation>肉块 %1 已更改</translation>
    </message>
    <message>
        <source>ingredient lot noted for %1</source>
        <translation>已为 %1 记下配料批号</translation>
    </message>
    <message>
        <source>ingredient lot changed for %1</source>
        <translation>%1 的配料批号已更改</translation>
    </message>
    <message>
        <source>weighing of %1</source>
        <translation>%1 的称重</translation>
    </message>
    <message>
        <source>weighings of %1</source>
        <translation>%1 的多次称重</translation>
    </message>
    <message>
        <source>correction of a weighing of %1</source>
        <translation>更正 %1 的一次称重</translation>
    </message>
    <message>
        <source>a weighing of %1 taken back</source>
        <translation>撤回 %1 的一次称重</translation>
    </message>
    <message>
        <source>event of %1</source>
        <translation>%1 的事件</translation>
    </message>
    <message>
        <source>an event of %1 taken back</source>
        <translation>撤回 %1 的一个事件</translation>
    </message>
    <message>
        <source>%1 cut into pieces</source>
        <translation>%1 已分切</translation>
    </message>
    <message>
        <source>pieces weighed as one: %1</source>
        <translation>合并称重的肉块：%1</translation>
    </message>
    <message>
        <source>%1 discarded</source>
        <translation>%1 已丢弃</translation>
    </message>
    <message>
        <source>plan of %1</source>
        <translation>%1 的计划</translation>
    </message>
    <message>
        <source>stage of %1 started</source>
        <translation>%1 的阶段已开始</translation>
    </message>
    <message>
        <source>stage of %1 ended</source>
        <translation>%1 的阶段已结束</translation>
    </message>
    <message>
        <source>task ticked for %1</source>
        <translation>%1 的任务已勾选</translation>
    </message>
    <message>
        <source>task unticked for %1</source>
        <translation>%1 的任务已取消勾选</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>%1 的备注</translation>
    </message>
    <message>
        <source>caution accepted for %1</source>
        <translation>已确认 %1 的警告</translation>
    </message>
    <message>
        <source>decision on %1</source>
        <translation>对 %1 的决定</translation>
    </message>
    <message>
        <source>outcome of %1</source>
        <translation>%1 的结果</translation>
    </message>
    <message>
        <source>new pack %1</source>
        <translation>新增成品包 %1</translation>
    </message>
    <message>
        <source>pack %1 changed</source>
        <translation>成品包 %1 已更改</translation>
    </message>
    <message>
        <source>taken from pack %1</source>
        <translation>从成品包 %1 取出</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>设置 %1</translation>
    </message>
    <message>
        <source>a change of %1</source>
        <translation>对 %1 的一次更改</translation>
    </message>
    <message>
        <source>(no code)</source>
        <translation>（无编号）</translation>
    </message>
</context>
<context>
    <name>AirStrips</name>
    <message>
        <source>a week at %1 (%2 to %3)</source>
        <translation>一周：%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% RH</translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>Calendar</source>
        <translation>日历</translation>
    </message>
    <message>
        <source>&amp;Save as calendar file…</source>
        <translation>另存为日历文件(&amp;S)…</translation>
    </message>
    <message>
        <source>No plan yet</source>
        <translation>尚无计划</translation>
    </message>
    <message>
        <source>Stages and work of every open batch stand here day by day. Save them as a calendar file to see them on a phone; saving again brings moved days up to date.</source>
        <translation>所有未结批次的阶段和任务按天列在这里。保存为日历文件后可在手机上查看；再次保存会更新改动过的日期。</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>计划一个批次</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>较早(&amp;E)</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>今天(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>较晚(&amp;L)</translation>
    </message>
    <message>
        <source>Days of the month</source>
        <translation>本月各日</translation>
    </message>
    <message>
        <source>On this day</source>
        <translation>这一天</translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation>这一天没有安排。</translation>
    </message>
    <message>
        <source>Stages and work by day, and as a calendar file</source>
        <translation>按天排列的阶段和任务，也可存为日历文件</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>A test weight near what is weighed; within 0.1 % of it. Monthly.</source>
        <translation>用接近待称重量的砝码；偏差不超过 0.1 %。每月一次。</translation>
    </message>
    <message>
        <source>Crushed ice in water, stirred: %1; within %2. Monthly.</source>
        <translation>碎冰加水搅匀：%1；偏差不超过 %2。每月一次。</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every six months.</source>
        <translation>湿盐糊，密封袋内放 12 小时：相对湿度 75 %；偏差不超过 3 至 5 个百分点。每六个月一次。</translation>
    </message>
    <message>
        <source>Two fresh buffers that bracket what is measured. Before use.</source>
        <translation>两种新配的缓冲液，量程涵盖被测值。使用前进行。</translation>
    </message>
    <message>
        <source>A salt standard near what is measured. Before use.</source>
        <translation>接近被测值的盐标准物。使用前进行。</translation>
    </message>
    <message>
        <source>As its maker says.</source>
        <translation>按制造商的说明。</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>日期和时间</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>对照物</translation>
    </message>
    <message>
        <source>Expected, %1</source>
        <translation>应为，%1</translation>
    </message>
    <message>
        <source>Found, %1</source>
        <translation>测得，%1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>偏差</translation>
    </message>
    <message>
        <source>Action taken</source>
        <translation>采取的措施</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>签名缩写</translation>
    </message>
    <message>
        <source>Last checked before: %1.</source>
        <translation>此前最近一次校验：%1。</translation>
    </message>
    <message>
        <source>Never checked before.</source>
        <translation>此前从未校验。</translation>
    </message>
    <message>
        <source>Calibration sheet</source>
        <translation>仪器校验单</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>尚未登记任何仪器。</translation>
    </message>
    <message>
        <source>How to check and how far off an instrument may be is common practice without a source: what your plan says goes before.</source>
        <translation>仪器如何校验、允许偏差多少，均为行业惯例，无出处：以您自己的方案为准。</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>校验人</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>负责人</translation>
    </message>
    <message numerus="yes">
        <source>Set to every %n day(s) here.</source>
        <translation>
            <numerusform>此处设为每 %n 天一次。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CautionsPage</name>
    <message>
        <source>A number is not a verdict</source>
        <translation>数字不是结论</translation>
    </message>
    <message>
        <source>Weight loss says how much water has gone, not whether a food may be eaten. Pieces at their target can be raw inside; pieces short of it can be finished. Look, touch, smell and cut before you decide. When in doubt, throw it out.</source>
        <translation>失重率说明走了多少水，不说明食物能不能吃。达到目标的肉块里面可能还是生的；未达目标的也可能已经做好。决定之前先看、摸、闻、切。拿不准就扔掉。</translation>
    </message>
    <message>
        <source>Curing salt is weighed, never guessed</source>
        <translation>腌制盐要称，绝不能估</translation>
    </message>
    <message>
        <source>Nitrite and nitrate are poisons in the wrong amount, and curing salts differ tenfold in strength. Enter the strength from the label of the packet in your hand. Use a scale that can weigh the dose. Keep curing salt marked and away from kitchen salt.</source>
        <translation>亚硝酸盐和硝酸盐用量不当就是毒物，各种腌制盐的浓度可相差十倍。请按手中包装标签输入浓度。使用能称准该用量的秤。腌制盐要做好标记，与食用盐分开放。</translation>
    </message>
    <message>
        <source>Cold first, then time</source>
        <translation>先要冷，再要时间</translation>
    </message>
    <message>
        <source>Cure in the cold, and keep the time the plan gives. A date on the calendar is no reason for a stronger dose or a shorter cure. After a failure of the fridge, what counts is how warm, how long and how far along each piece was.</source>
        <translation>在低温下腌制，并按计划给足时间。日历上的日期不是加大用量或缩短腌制的理由。冰箱出故障后，要看每块肉温度多高、持续多久、进行到哪一步。</translation>
    </message>
    <message>
        <source>Instruments are often wrong</source>
        <translation>仪器常常不准</translation>
    </message>
    <message>
        <source>Check the scale with a known weight, the thermometer in ice water, the hygrometer over a salt slurry. A reading nobody has checked is a guess with digits.</source>
        <translation>用已知砝码校秤，用冰水校温度计，用湿盐糊校湿度计。没有校验过的读数只是带数字的猜测。</translation>
    </message>
    <message>
        <source>Limits belong to your law</source>
        <translation>限量以当地法规为准</translation>
    </message>
    <message>
        <source>The limit sets here are quoted with their source and date. Those marked unverified were not read in the issuer&apos;s own words. If you sell or give food away, the code where you live, your licence and your laboratory come before anything this program shows.</source>
        <translation>此处的各套限量均注明出处和日期。标为“未核实”的，并未读过发布机构的原文。如果您出售或赠送食品，当地法规、您的许可和您的实验室都先于本程序显示的任何内容。</translation>
    </message>
    <message>
        <source>Estimates carry a range</source>
        <translation>估计值带有范围</translation>
    </message>
    <message>
        <source>Forecasts, water activity and salt in the finished piece are estimates from your entries and published formulas. The range is part of the answer. Only a laboratory measures water activity and pH in your piece.</source>
        <translation>预测、水分活度和成品含盐量，都是根据您的记录和公开公式得出的估计。范围也是答案的一部分。只有实验室能测出您这块肉的水分活度和 pH。</translation>
    </message>
    <message>
        <source>Some people need more care</source>
        <translation>有些人需要格外小心</translation>
    </message>
    <message>
        <source>Dry-cured meat that is not cooked is a risk for the pregnant, the very young, the old and the ill. Pork and game can carry parasites that curing alone may not kill; follow the official freezing or cooking times for your country.</source>
        <translation>未经加热的干腌肉对孕妇、幼儿、老人和病人有风险。猪肉和野味可能带有仅靠腌制未必能杀灭的寄生虫；请遵照所在国家官方规定的冷冻或加热时间。</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意事项</translation>
    </message>
    <message>
        <source>What to keep in mind before trusting a number</source>
        <translation>相信一个数字之前要记住的事</translation>
    </message>
</context>
<context>
    <name>ClimateChart</name>
    <message>
        <source>temperature, %1</source>
        <translation>温度，%1</translation>
    </message>
    <message>
        <source>humidity, % RH</source>
        <translation>湿度，% RH</translation>
    </message>
    <message>
        <source>drying force, Pa</source>
        <translation>干燥力，Pa</translation>
    </message>
    <message>
        <source> · dew point %1</source>
        <translation> · 露点 %1</translation>
    </message>
    <message>
        <source> · drying force %1 Pa</source>
        <translation> · 干燥力 %1 Pa</translation>
    </message>
    <message>
        <source>%1: least to greatest</source>
        <translation>%1：最小至最大</translation>
    </message>
    <message>
        <source>%1: dew point</source>
        <translation>%1：露点</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>无读数</translation>
    </message>
    <message>
        <source>lower bound</source>
        <translation>下限</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>上限</translation>
    </message>
    <message>
        <source>%1 has no readings in this time.</source>
        <translation>%1 在此期间没有读数。</translation>
    </message>
    <message>
        <source>%1: %2 to %3, pauses without readings: %4.</source>
        <translation>%1：%2 至 %3，无读数的间断：%4。</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>%1 Pa</source>
        <translation>%1 Pa</translation>
    </message>
    <message>
        <source>From</source>
        <translation>自</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>露点</translation>
    </message>
    <message>
        <source>Drying force</source>
        <translation>干燥力</translation>
    </message>
</context>
<context>
    <name>ClimateWords</name>
    <message>
        <source>comma</source>
        <translation>逗号</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>分号</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>制表符</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>竖线</translation>
    </message>
    <message>
        <source>point</source>
        <translation>点</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>年、月、日</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>日、月、年</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>月、日、年</translation>
    </message>
    <message>
        <source>seconds since 1970</source>
        <translation>自 1970 年起的秒数</translation>
    </message>
    <message>
        <source>milliseconds since 1970</source>
        <translation>自 1970 年起的毫秒数</translation>
    </message>
    <message>
        <source>day numbers of a spreadsheet</source>
        <translation>电子表格的日期序号</translation>
    </message>
    <message>
        <source>each time says its own</source>
        <translation>每个时间自带时区</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>%1 当地时间</translation>
    </message>
    <message>
        <source>%1%2:%3 all year</source>
        <translation>全年 %1%2:%3</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>百分比</translation>
    </message>
    <message>
        <source>a share of 1</source>
        <translation>以 1 为整的比例</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>字符编码</translation>
    </message>
    <message>
        <source>Columns parted by</source>
        <translation>列分隔符</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>小数点符号</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>日期格式</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>时钟</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>温度单位</translation>
    </message>
    <message>
        <source>Humidity in</source>
        <translation>湿度单位</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>第 %1 列</translation>
    </message>
    <message>
        <source>you said so</source>
        <translation>由您指定</translation>
    </message>
    <message>
        <source>as confirmed for this sensor before</source>
        <translation>沿用此传感器以前的确认</translation>
    </message>
    <message>
        <source>the file&apos;s own mark</source>
        <translation>文件自带的标记</translation>
    </message>
    <message>
        <source>the heading names it</source>
        <translation>表头写明</translation>
    </message>
    <message>
        <source>nothing else fits the lines</source>
        <translation>其他读法与各行不符</translation>
    </message>
    <message>
        <source>otherwise time would jump</source>
        <translation>否则时间会跳跃</translation>
    </message>
    <message>
        <source>the values look like it</source>
        <translation>数值看起来如此</translation>
    </message>
    <message>
        <source>the rest of the file makes it likely</source>
        <translation>文件其余部分表明很可能如此</translation>
    </message>
    <message>
        <source>nothing in the file says so</source>
        <translation>文件中没有说明</translation>
    </message>
    <message>
        <source>sure, %1</source>
        <translation>确定，%1</translation>
    </message>
    <message>
        <source>fairly sure, %1</source>
        <translation>比较确定，%1</translation>
    </message>
    <message>
        <source>▲ a guess, %1</source>
        <translation>▲ 猜测，%1</translation>
    </message>
    <message>
        <source>no date and time</source>
        <translation>没有日期和时间</translation>
    </message>
    <message>
        <source>an hour the clock skipped in spring</source>
        <translation>春季拨钟跳过的一小时</translation>
    </message>
    <message>
        <source>the line is cut off</source>
        <translation>该行不完整</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>没有数字</translation>
    </message>
    <message>
        <source>a value no air has</source>
        <translation>空气不可能有的数值</translation>
    </message>
    <message>
        <source>neither temperature nor humidity</source>
        <translation>既无温度也无湿度</translation>
    </message>
    <message>
        <source>the heading again</source>
        <translation>表头重复出现</translation>
    </message>
    <message>
        <source>an endless line</source>
        <translation>过长的行</translation>
    </message>
    <message>
        <source>a quote that never closes</source>
        <translation>引号没有闭合</translation>
    </message>
    <message>
        <source>not text</source>
        <translation>不是文本</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>太冷</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>太热</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>太干</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>太湿</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>estimate below its bound</source>
        <translation>估计值低于界限</translation>
    </message>
    <message>
        <source>estimate straddles its bound</source>
        <translation>估计范围跨越界限</translation>
    </message>
    <message>
        <source>estimate above its bound</source>
        <translation>估计值高于界限</translation>
    </message>
</context>
<context>
    <name>Data</name>
    <message>
        <source>A second salting two days after the first.</source>
        <translation>第一次上盐两天后再上第二次盐。</translation>
    </message>
    <message>
        <source>About two minutes for each day in cure, water at most 70 °F.</source>
        <translation>腌制每满一天约浸两分钟，水温最高 70 °F。</translation>
    </message>
    <message>
        <source>After salting</source>
        <translation>上盐之后</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>熟成</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>通风</translation>
    </message>
    <message>
        <source>American country</source>
        <translation>美国乡村式</translation>
    </message>
    <message>
        <source>Another spice or herb</source>
        <translation>其他香料或香草</translation>
    </message>
    <message>
        <source>Ascorbic acid (vitamin C)</source>
        <translation>抗坏血酸（维生素 C）</translation>
    </message>
    <message>
        <source>Australia and New Zealand: cured meat</source>
        <translation>澳大利亚和新西兰：腌制肉</translation>
    </message>
    <message>
        <source>Bacon, dry cured and smoked</source>
        <translation>培根，干腌并烟熏</translation>
    </message>
    <message>
        <source>Bay leaf</source>
        <translation>月桂叶</translation>
    </message>
    <message>
        <source>Biltong</source>
        <translation>南非干肉条（Biltong）</translation>
    </message>
    <message>
        <source>Black pepper, ground</source>
        <translation>黑胡椒，磨碎</translation>
    </message>
    <message>
        <source>Black pepper, whole</source>
        <translation>黑胡椒，整粒</translation>
    </message>
    <message>
        <source>Bresaola</source>
        <translation>风干牛肉（Bresaola）</translation>
    </message>
    <message>
        <source>Brine</source>
        <translation>盐水</translation>
    </message>
    <message>
        <source>Brown sugar, packed</source>
        <translation>红糖，压实</translation>
    </message>
    <message>
        <source>Burn through</source>
        <translation>透盐</translation>
    </message>
    <message>
        <source>Cabinet drying</source>
        <translation>风干柜风干</translation>
    </message>
    <message>
        <source>Canada: cured meat</source>
        <translation>加拿大：腌制肉</translation>
    </message>
    <message>
        <source>Canada: side bacon</source>
        <translation>加拿大：五花培根（side bacon）</translation>
    </message>
    <message>
        <source>Case and tie</source>
        <translation>装肠衣并捆扎</translation>
    </message>
    <message>
        <source>Cellar</source>
        <translation>地窖</translation>
    </message>
    <message>
        <source>Central European smoked</source>
        <translation>中欧烟熏式</translation>
    </message>
    <message>
        <source>Chilli, ground or flakes</source>
        <translation>辣椒，粉或碎片</translation>
    </message>
    <message>
        <source>Chinese wind-dried</source>
        <translation>中式腊味</translation>
    </message>
    <message>
        <source>Coarse sea salt</source>
        <translation>粗海盐</translation>
    </message>
    <message>
        <source>Codex: heat-treated whole cuts</source>
        <translation>国际食品法典：热处理的整块肉</translation>
    </message>
    <message>
        <source>Cold smoke</source>
        <translation>冷熏</translation>
    </message>
    <message>
        <source>Cool dry</source>
        <translation>低温风干</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>预冷</translation>
    </message>
    <message>
        <source>Coppa</source>
        <translation>风干梅花肉（Coppa）</translation>
    </message>
    <message>
        <source>Coriander seed</source>
        <translation>芫荽籽</translation>
    </message>
    <message>
        <source>Country and dry-cured ham: water activity</source>
        <translation>乡村火腿和干腌火腿：水分活度</translation>
    </message>
    <message>
        <source>Country ham</source>
        <translation>乡村火腿</translation>
    </message>
    <message>
        <source>Country ham: internal salt</source>
        <translation>乡村火腿：内部含盐量</translation>
    </message>
    <message>
        <source>Country ham: loss of fresh weight</source>
        <translation>乡村火腿：相对鲜重的失重率</translation>
    </message>
    <message>
        <source>Country shoulder</source>
        <translation>乡村前腿</translation>
    </message>
    <message>
        <source>Cure</source>
        <translation>腌制</translation>
    </message>
    <message>
        <source>Curing salt No. 1 (6.25 % nitrite)</source>
        <translation>1 号腌制盐（亚硝酸盐 6.25 %）</translation>
    </message>
    <message>
        <source>Curing salt No. 2 (6.25 % nitrite, nitrate by label)</source>
        <translation>2 号腌制盐（亚硝酸盐 6.25 %，硝酸盐按标签）</translation>
    </message>
    <message>
        <source>Curing salt, UK (5.88 % nitrite)</source>
        <translation>英国腌制盐（亚硝酸盐 5.88 %）</translation>
    </message>
    <message>
        <source>Curing salt, strength from its label</source>
        <translation>腌制盐，浓度按其标签</translation>
    </message>
    <message>
        <source>Damp rests let the inside follow the surface.</source>
        <translation>保湿静置使内部跟上表面。</translation>
    </message>
    <message>
        <source>Dextrose (monohydrate)</source>
        <translation>葡萄糖（一水）</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>沥水</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>风干</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: Rohschinken</source>
        <translation>欧盟 2025 年 10 月 9 日前：Rohschinken（生火腿）</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured bacon</source>
        <translation>欧盟 2025 年 10 月 9 日前：干腌培根</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: dry cured ham, jamon, lomo, cecina</source>
        <translation>欧盟 2025 年 10 月 9 日前：干腌火腿、jamon、lomo、cecina</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: jambon sec</source>
        <translation>欧盟 2025 年 10 月 9 日前：jambon sec（干火腿）</translation>
    </message>
    <message>
        <source>EU before 9 October 2025: not heat treated</source>
        <translation>欧盟 2025 年 10 月 9 日前：未经热处理</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: not heat treated</source>
        <translation>欧盟 2025 年 10 月 9 日起：未经热处理</translation>
    </message>
    <message>
        <source>EU from 9 October 2025: sterilised</source>
        <translation>欧盟 2025 年 10 月 9 日起：经灭菌</translation>
    </message>
    <message>
        <source>Equalise and dry the surface</source>
        <translation>均盐并晾干表面</translation>
    </message>
    <message>
        <source>Equalise</source>
        <translation>均盐</translation>
    </message>
    <message>
        <source>Erythorbic acid</source>
        <translation>异抗坏血酸</translation>
    </message>
    <message>
        <source>Fennel seed</source>
        <translation>小茴香籽</translation>
    </message>
    <message>
        <source>Fenugreek, ground</source>
        <translation>胡芦巴，磨碎</translation>
    </message>
    <message>
        <source>Fine sea salt</source>
        <translation>细海盐</translation>
    </message>
    <message>
        <source>First drying</source>
        <translation>第一次风干</translation>
    </message>
    <message>
        <source>First press</source>
        <translation>第一次压制</translation>
    </message>
    <message>
        <source>First rest</source>
        <translation>第一次静置</translation>
    </message>
    <message>
        <source>First salt</source>
        <translation>第一次上盐</translation>
    </message>
    <message>
        <source>Fish sauce</source>
        <translation>鱼露</translation>
    </message>
    <message>
        <source>Flake salt</source>
        <translation>片状盐</translation>
    </message>
    <message>
        <source>Follows the seasons where there is no thermostat.</source>
        <translation>没有恒温设备的地方随季节进行。</translation>
    </message>
    <message>
        <source>French</source>
        <translation>法式</translation>
    </message>
    <message>
        <source>Fresh air</source>
        <translation>透气</translation>
    </message>
    <message>
        <source>Garlic powder</source>
        <translation>蒜粉</translation>
    </message>
    <message>
        <source>Garlic, fresh</source>
        <translation>大蒜，新鲜</translation>
    </message>
    <message>
        <source>Great Britain: not heat treated</source>
        <translation>大不列颠：未经热处理</translation>
    </message>
    <message>
        <source>Guanciale</source>
        <translation>风干猪颊肉（Guanciale）</translation>
    </message>
    <message>
        <source>Hang to even out the salt and dry the skin.</source>
        <translation>晾挂，使盐分均匀、表皮变干。</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>晾挂</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>蜂蜜</translation>
    </message>
    <message>
        <source>Italian and Spanish leg</source>
        <translation>意大利和西班牙式后腿</translation>
    </message>
    <message>
        <source>Italian whole muscle</source>
        <translation>意大利式整块肉</translation>
    </message>
    <message>
        <source>Jambon sec</source>
        <translation>法式干火腿（Jambon sec）</translation>
    </message>
    <message>
        <source>Juniper berries</source>
        <translation>杜松子</translation>
    </message>
    <message>
        <source>Kosher salt, dense grain</source>
        <translation>犹太盐，密实颗粒</translation>
    </message>
    <message>
        <source>Kosher salt, light grain</source>
        <translation>犹太盐，松散颗粒</translation>
    </message>
    <message>
        <source>Lard</source>
        <translation>抹猪油</translation>
    </message>
    <message>
        <source>Last drying</source>
        <translation>最后一次风干</translation>
    </message>
    <message>
        <source>Leg, air-dried on the bone</source>
        <translation>后腿，带骨风干</translation>
    </message>
    <message>
        <source>Leg, mountain air</source>
        <translation>后腿，山地风干</translation>
    </message>
    <message>
        <source>Listeria cannot grow: water activity</source>
        <translation>李斯特氏菌不能生长：水分活度</translation>
    </message>
    <message>
        <source>Lomo, loin in adobo</source>
        <translation>通脊（Lomo），adobo 香料腌制</translation>
    </message>
    <message>
        <source>Long rest</source>
        <translation>长时间静置</translation>
    </message>
    <message>
        <source>Lonzino, the cured loin</source>
        <translation>腌制通脊（Lonzino）</translation>
    </message>
    <message>
        <source>Magret, dried duck breast</source>
        <translation>风干鸭胸（Magret）</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>枫糖浆</translation>
    </message>
    <message>
        <source>Marinate</source>
        <translation>腌泡</translation>
    </message>
    <message>
        <source>Nitrite curing salt (0.6 %)</source>
        <translation>亚硝酸盐腌制盐（0.6 %）</translation>
    </message>
    <message>
        <source>Nitrite curing salt, German (0.4 to 0.5 %)</source>
        <translation>德国亚硝酸盐腌制盐（0.4 至 0.5 %）</translation>
    </message>
    <message>
        <source>No Codex entry for cured whole cuts that are not heat treated (08.2.1) was found: do not take this one for them.</source>
        <translation>未找到国际食品法典关于未经热处理的腌制整块肉（08.2.1）的条目：不要拿这一条代替。</translation>
    </message>
    <message>
        <source>No cold stage: a warm dry room with moving air.</source>
        <translation>没有低温阶段：温暖干燥、空气流动的房间。</translation>
    </message>
    <message>
        <source>Only the ingoing row could be read, at second hand. Residual and nitrate rows of the new Annex are not here: read them before you rely on this set.</source>
        <translation>只读到了添加量一行，且为转引。新附件中的残留量和硝酸盐各行不在这里：依赖这套限量之前请先阅读原文。</translation>
    </message>
    <message>
        <source>Out by day, in by night; 4 to 15 °C and 45 to 70 % are what cooks name. Warm spring weather stops it.</source>
        <translation>白天挂出，夜间收回；做的人常说 4 至 15 °C、45 至 70 %。春天转暖即停。</translation>
    </message>
    <message>
        <source>Pancetta, flat</source>
        <translation>平板五花肉（Pancetta）</translation>
    </message>
    <message>
        <source>Pancetta, rolled</source>
        <translation>五花肉卷（Pancetta）</translation>
    </message>
    <message>
        <source>Paprika, ground</source>
        <translation>红椒粉</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>抹香料膏</translation>
    </message>
    <message>
        <source>Pastirma</source>
        <translation>香料风干牛肉（Pastirma）</translation>
    </message>
    <message>
        <source>Pickle</source>
        <translation>湿腌</translation>
    </message>
    <message>
        <source>Pickling salt</source>
        <translation>泡菜盐</translation>
    </message>
    <message>
        <source>Poitrine séchée, dried belly</source>
        <translation>风干五花肉（Poitrine séchée）</translation>
    </message>
    <message>
        <source>Potassium nitrite, undiluted</source>
        <translation>亚硝酸钾，未稀释</translation>
    </message>
    <message>
        <source>Pulsed dry</source>
        <translation>间歇风干</translation>
    </message>
    <message>
        <source>Raw ham, from the brine</source>
        <translation>生火腿，湿腌</translation>
    </message>
    <message>
        <source>Raw ham, smoked</source>
        <translation>生火腿，烟熏</translation>
    </message>
    <message>
        <source>Rest in a bag</source>
        <translation>袋内静置</translation>
    </message>
    <message>
        <source>Rest in the cold</source>
        <translation>低温静置</translation>
    </message>
    <message>
        <source>Restack and turn every day.</source>
        <translation>每天重新堆垛并翻面。</translation>
    </message>
    <message>
        <source>Rice wine, strength from its label</source>
        <translation>米酒，度数按其标签</translation>
    </message>
    <message>
        <source>Rinse and pepper</source>
        <translation>冲洗并撒胡椒</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>冲洗</translation>
    </message>
    <message>
        <source>Ripen</source>
        <translation>后熟</translation>
    </message>
    <message>
        <source>Rock salt</source>
        <translation>岩盐</translation>
    </message>
    <message>
        <source>Roll, case and tie</source>
        <translation>卷起、装肠衣并捆扎</translation>
    </message>
    <message>
        <source>Rub</source>
        <translation>擦盐</translation>
    </message>
    <message>
        <source>Salt and adobo</source>
        <translation>盐与 adobo 香料</translation>
    </message>
    <message>
        <source>Salt and vinegar</source>
        <translation>盐与醋</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>水相含盐量</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>上盐</translation>
    </message>
    <message>
        <source>Salted and smoked belly</source>
        <translation>烟熏腊肉（五花肉）</translation>
    </message>
    <message>
        <source>Salted by eye and weight class: write down what was used.</source>
        <translation>凭眼力和重量等级上盐：请记下实际用量。</translation>
    </message>
    <message>
        <source>Saltpetre (potassium nitrate)</source>
        <translation>硝石（硝酸钾）</translation>
    </message>
    <message>
        <source>Second drying</source>
        <translation>第二次风干</translation>
    </message>
    <message>
        <source>Second press</source>
        <translation>第二次压制</translation>
    </message>
    <message>
        <source>Second salt</source>
        <translation>第二次上盐</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>盐后平衡</translation>
    </message>
    <message>
        <source>Shelf stable: water activity</source>
        <translation>常温可存：水分活度</translation>
    </message>
    <message>
        <source>Shoulder or ham in sweet pickle</source>
        <translation>甜腌液湿腌的前腿或后腿</translation>
    </message>
    <message>
        <source>Six hours warm, then down two degrees every twelve hours.</source>
        <translation>先温六小时，然后每十二小时降两度。</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>烟熏</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>浸泡</translation>
    </message>
    <message>
        <source>Sodium ascorbate</source>
        <translation>抗坏血酸钠</translation>
    </message>
    <message>
        <source>Sodium erythorbate</source>
        <translation>异抗坏血酸钠</translation>
    </message>
    <message>
        <source>Sodium nitrate, undiluted</source>
        <translation>硝酸钠，未稀释</translation>
    </message>
    <message>
        <source>Sodium nitrite, undiluted</source>
        <translation>亚硝酸钠，未稀释</translation>
    </message>
    <message>
        <source>Sodium tripolyphosphate</source>
        <translation>三聚磷酸钠</translation>
    </message>
    <message>
        <source>South African</source>
        <translation>南非式</translation>
    </message>
    <message>
        <source>Soy and spirit by volume: weigh them.</source>
        <translation>酱油和烈酒若按体积给出：请称重。</translation>
    </message>
    <message>
        <source>Soy sauce</source>
        <translation>酱油</translation>
    </message>
    <message>
        <source>Spanish loin</source>
        <translation>西班牙通脊</translation>
    </message>
    <message>
        <source>Speck</source>
        <translation>烟熏生火腿（Speck）</translation>
    </message>
    <message>
        <source>Spirit, strength from its label</source>
        <translation>烈酒，度数按其标签</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>堆垛</translation>
    </message>
    <message>
        <source>Summer sweat is wanted. Internal temperature at most 95 °F (9 CFR 319.106).</source>
        <translation>夏季“出汗”是需要的。内部温度最高 95 °F（9 CFR 319.106）。</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>食用盐</translation>
    </message>
    <message>
        <source>The casing day is the birthday of the piece: weigh it bare and dressed.</source>
        <translation>装肠衣的那天是肉块的“生日”：裸重和装好后各称一次。</translation>
    </message>
    <message>
        <source>The next weighing may be wet.</source>
        <translation>下一次称重时表面可能是湿的。</translation>
    </message>
    <message>
        <source>The rule counts the thickness before rolling: enter the flat thickness for the cure.</source>
        <translation>规则按卷起前的厚度计：腌制请输入平放时的厚度。</translation>
    </message>
    <message>
        <source>Third drying</source>
        <translation>第三次风干</translation>
    </message>
    <message>
        <source>Thread and hang</source>
        <translation>穿绳晾挂</translation>
    </message>
    <message>
        <source>Three and a half to four days per pound, about 36 °F.</source>
        <translation>每磅三天半至四天，约 36 °F。</translation>
    </message>
    <message>
        <source>Three to five millimetres of paste: weigh before and after.</source>
        <translation>香料膏厚三至五毫米：抹之前和之后都要称重。</translation>
    </message>
    <message>
        <source>Turkish and Armenian pressed</source>
        <translation>土耳其和亚美尼亚压制式</translation>
    </message>
    <message>
        <source>Two days per pound.</source>
        <translation>每磅两天。</translation>
    </message>
    <message>
        <source>US FSIS: bacon, dry cured</source>
        <translation>美国 FSIS：培根，干腌</translation>
    </message>
    <message>
        <source>US FSIS: bacon, immersion cured</source>
        <translation>美国 FSIS：培根，湿腌</translation>
    </message>
    <message>
        <source>US FSIS: bacon, pumped</source>
        <translation>美国 FSIS：培根，注射</translation>
    </message>
    <message>
        <source>US FSIS: chopped</source>
        <translation>美国 FSIS：切碎</translation>
    </message>
    <message>
        <source>US FSIS: cured, labelled to keep refrigerated</source>
        <translation>美国 FSIS：腌制，标明须冷藏</translation>
    </message>
    <message>
        <source>US FSIS: dry cured</source>
        <translation>美国 FSIS：干腌</translation>
    </message>
    <message>
        <source>US FSIS: immersed, pumped or massaged</source>
        <translation>美国 FSIS：湿腌、注射或滚揉</translation>
    </message>
    <message>
        <source>US home curing</source>
        <translation>美国家庭腌制</translation>
    </message>
    <message>
        <source>Vinegar (5 % acid)</source>
        <translation>醋（酸度 5 %）</translation>
    </message>
    <message>
        <source>Warm rest</source>
        <translation>常温静置</translation>
    </message>
    <message>
        <source>Warm start</source>
        <translation>温热初干</translation>
    </message>
    <message>
        <source>Wash and pepper</source>
        <translation>清洗并撒胡椒</translation>
    </message>
    <message>
        <source>Wash and soak</source>
        <translation>清洗并浸泡</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>清洗</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>水</translation>
    </message>
    <message>
        <source>Weigh before and after.</source>
        <translation>之前和之后都要称重。</translation>
    </message>
    <message>
        <source>White pepper, ground</source>
        <translation>白胡椒，磨碎</translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation>白糖</translation>
    </message>
    <message>
        <source>Whole muscle in a cabinet, pulsed air</source>
        <translation>风干柜中的整块肉，间歇送风</translation>
    </message>
    <message>
        <source>Wind dry</source>
        <translation>迎风晾干</translation>
    </message>
    <message>
        <source>Wind-dried belly</source>
        <translation>腊肉（风干五花肉）</translation>
    </message>
    <message>
        <source>Wine, strength from its label</source>
        <translation>葡萄酒，度数按其标签</translation>
    </message>
    <message>
        <source>Wipe and dip</source>
        <translation>擦净并浸蘸</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>牛肉</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>杯（美制）</translation>
    </message>
    <message>
        <source>cup (metric)</source>
        <translation>杯（公制）</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>鸭肉</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>猪肉</translation>
    </message>
    <message>
        <source>tablespoon (Australia)</source>
        <translation>汤匙（澳大利亚）</translation>
    </message>
    <message>
        <source>tablespoon (US food label)</source>
        <translation>汤匙（美国食品标签）</translation>
    </message>
    <message>
        <source>tablespoon (US)</source>
        <translation>汤匙（美制）</translation>
    </message>
    <message>
        <source>tablespoon (imperial)</source>
        <translation>汤匙（英制）</translation>
    </message>
    <message>
        <source>tablespoon (metric)</source>
        <translation>汤匙（公制）</translation>
    </message>
    <message>
        <source>tablespoon (traditional British)</source>
        <translation>汤匙（传统英式）</translation>
    </message>
    <message>
        <source>teaspoon (US)</source>
        <translation>茶匙（美制）</translation>
    </message>
    <message>
        <source>teaspoon (metric)</source>
        <translation>茶匙（公制）</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>亚硝酸盐</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>硝酸盐</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>Dry-cured ham, cut, in the cold</source>
        <translation>干腌火腿，已切开，冷藏</translation>
    </message>
    <message>
        <source>Dry-cured ham, frozen</source>
        <translation>干腌火腿，冷冻</translation>
    </message>
    <message>
        <source>Dry-cured ham, whole and uncut, in a cool room</source>
        <translation>干腌火腿，整只未切，阴凉处</translation>
    </message>
    <message>
        <source>Opened, wrapped again, in the cold</source>
        <translation>已开封，重新包裹，冷藏</translation>
    </message>
    <message>
        <source>Thawed and opened, in the cold</source>
        <translation>已解冻并开封，冷藏</translation>
    </message>
    <message>
        <source>Whole muscle under vacuum, in the cold</source>
        <translation>整块肉，真空包装，冷藏</translation>
    </message>
    <message>
        <source>Whole muscle, frozen under vacuum</source>
        <translation>整块肉，真空冷冻</translation>
    </message>
    <message>
        <source>Whole muscle, uncut, wrapped, in the cold</source>
        <translation>整块肉，未切，包裹，冷藏</translation>
    </message>
    <message>
        <source>for quality</source>
        <translation>为了品质</translation>
    </message>
    <message>
        <source>for quality: fat turns rancid</source>
        <translation>为了品质：脂肪会哈败</translation>
    </message>
    <message>
        <source>for quality; of whole hams on the bone</source>
        <translation>为了品质；指整只带骨火腿</translation>
    </message>
    <message>
        <source>it goes on drying in the fridge</source>
        <translation>在冰箱里会继续变干</translation>
    </message>
    <message>
        <source>the chart gives three weeks after opening</source>
        <translation>该表给出开封后三周</translation>
    </message>
    <message>
        <source>the chart gives two to three months</source>
        <translation>该表给出两到三个月</translation>
    </message>
    <message>
        <source>without air some dangerous microbes grow better: only for pieces that are dry and salted through</source>
        <translation>没有空气时某些危险微生物生长更好：只适用于干透且盐渗透到中心的肉块</translation>
    </message>
</context>
<context>
    <name>DateWords</name>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A calendar day with its year, in Qt&apos;s date format; keep the parts, change their order.</extracomment>
        <translation>yyyy年M月d日</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>A calendar day without its year, in Qt&apos;s date format.</extracomment>
        <translation>M月d日 ddd</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A calendar day of few letters, in Qt&apos;s date format.</extracomment>
        <translation>M月d日</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day, %2 a clock time</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>今天</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>明天</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>昨天</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>%n 天后</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n 天前</numerusform>
        </translation>
    </message>
    <message>
        <source>d</source>
        <extracomment>The day of the month before &quot;to 20 Mar 2026&quot;, in Qt&apos;s date format.</extracomment>
        <translation>M月d日</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days, e.g. &quot;14 to 20 Mar 2026&quot;</extracomment>
        <translation>%1至%2</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>A month, in Qt&apos;s date format.</extracomment>
        <translation>yyyy年M月</translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>Nothing is entered here yet. Type a value.</source>
        <translation>这里尚未输入。请输入数值。</translation>
    </message>
    <message>
        <source>“%1” is not a number. Type digits, such as 740 or 2.5.</source>
        <translation>“%1”不是数字。请输入数字，例如 740 或 2.5。</translation>
    </message>
    <message>
        <source>The unit “%1” is not known. Use g, kg, oz, lb, mm, in, °C, °F, mL or fl oz.</source>
        <translation>不认识单位“%1”。请用 g、kg、oz、lb、mm、in、°C、°F、mL 或 fl oz。</translation>
    </message>
    <message>
        <source>Say which unit is meant, such as g or oz.</source>
        <translation>请写明单位，例如 g 或 oz。</translation>
    </message>
    <message>
        <source>“%1” is another kind of quantity than is asked for here. Enter one in the unit shown beside the field.</source>
        <translation>“%1”与此处要求的量不同类。请按字段旁所示单位输入。</translation>
    </message>
    <message>
        <source>“%1” is outside what is possible here. Check the digits and the unit.</source>
        <translation>“%1”超出此处可能的范围。请检查数字和单位。</translation>
    </message>
    <message>
        <source>“%1” is left over after the value. Take it away or write it in a note.</source>
        <translation>数值后面多出了“%1”。请删去，或写入备注。</translation>
    </message>
    <message>
        <source>“%1” can be read as a thousand or as a decimal. Write it without a thousands mark.</source>
        <translation>“%1”可理解为千位，也可理解为小数。请不要用千位分隔符。</translation>
    </message>
    <message>
        <source>This is not in the expected form: %1. Check that it is the file you meant.</source>
        <translation>格式与预期不符：%1。请确认是否选对了文件。</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Add it to the file&apos;s first line.</source>
        <translation>缺少“%1”列。请把它加到文件首行。</translation>
    </message>
    <message>
        <source>A line could not be read: %1. Mend it and read the file again.</source>
        <translation>有一行无法读取：%1。请改正后重新读取文件。</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known on this computer. Choose another in Preferences.</source>
        <translation>此电脑不认识时区“%1”。请在“设置”中另选一个。</translation>
    </message>
    <message>
        <source>%1 was not found. Check the name and whether the disk is there.</source>
        <translation>未找到 %1。请检查名称以及磁盘是否已连接。</translation>
    </message>
    <message>
        <source>%1 may not be read or written by you. Change its permissions or choose another place.</source>
        <translation>您无权读写 %1。请更改权限或换一个位置。</translation>
    </message>
    <message>
        <source>%1 is a folder. Choose a file in it.</source>
        <translation>%1 是文件夹。请选择其中的文件。</translation>
    </message>
    <message>
        <source>%1 is not a Saltloft book. Choose another file, or make a new book.</source>
        <translation>%1 不是 Saltloft 记录簿。请选择其他文件，或新建记录簿。</translation>
    </message>
    <message>
        <source>This book was written by a newer Saltloft (%1). Install that version to open it; nothing was changed.</source>
        <translation>此记录簿由较新的 Saltloft（%1）写成。请安装该版本再打开；未作任何更改。</translation>
    </message>
    <message>
        <source>The book is damaged: %1. Open a backup, or salvage what can be read into a new book.</source>
        <translation>记录簿已损坏：%1。请打开备份，或把还能读取的内容抢救到新记录簿中。</translation>
    </message>
    <message>
        <source>The book is busy in another program. Close it there and try again.</source>
        <translation>记录簿正被另一程序占用。请在那里关闭后重试。</translation>
    </message>
    <message>
        <source>The disk is full. Free some space and try again; nothing was lost.</source>
        <translation>磁盘已满。请腾出空间后重试；没有丢失任何内容。</translation>
    </message>
    <message>
        <source>The disk did not answer as it should: %1. Check the disk, then try again.</source>
        <translation>磁盘没有正常响应：%1。请检查磁盘后重试。</translation>
    </message>
    <message>
        <source>The book is open for reading only, so nothing was changed. Close it elsewhere or free the file, then open it again.</source>
        <translation>记录簿以只读方式打开，因此未作任何更改。请在别处关闭它或解除文件占用，然后重新打开。</translation>
    </message>
    <message>
        <source>This entry is no longer in the book: %1. Go back and choose again.</source>
        <translation>此条目已不在记录簿中：%1。请返回重新选择。</translation>
    </message>
    <message>
        <source>This clashes with what is in the book: %1. Choose another code, or look at the entry again and repeat.</source>
        <translation>与记录簿中的内容冲突：%1。请换一个编号，或查看该条目后再试。</translation>
    </message>
    <message>
        <source>The book does not allow this: %1. Mend what is named and try again.</source>
        <translation>记录簿不允许这样做：%1。请改正所指内容后重试。</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>没有可撤销的操作。</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <translation>没有可重做的操作。</translation>
    </message>
    <message>
        <source>There is no answer that meets everything asked: %1. Loosen one of the wishes.</source>
        <translation>没有能满足全部要求的答案：%1。请放宽其中一项。</translation>
    </message>
    <message>
        <source>The computation did not settle: %1. More weighings usually help.</source>
        <translation>计算未能收敛：%1。多称几次通常有帮助。</translation>
    </message>
    <message>
        <source>Stopped, as you asked. Nothing was changed.</source>
        <translation>已按您的要求停止。未作任何更改。</translation>
    </message>
    <message>
        <source>Something went wrong: %1. Try again.</source>
        <translation>出错了：%1。请重试。</translation>
    </message>
    <message>
        <source>no detail</source>
        <translation>没有详情</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a place such as &quot;line 14&quot; or a file, %2 a sentence</extracomment>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>this entry</source>
        <translation>此条目</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Please look at this: %1.</source>
        <translation>请查看：%1。</translation>
    </message>
    <message>
        <source>Please look at %1: %2.</source>
        <translation>请查看 %1：%2。</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> （%1）</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>提示</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>警告</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>%1, by arithmetic from it</source>
        <translation>%1，由此推算</translation>
    </message>
    <message>
        <source>%1 – unverified: read as quoted by others</source>
        <translation>%1 – 未核实：按他人转引</translation>
    </message>
    <message>
        <source>%1 – unverified: from memory</source>
        <translation>%1 – 未核实：凭记忆</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>行业惯例，无出处</translation>
    </message>
    <message>
        <source>This book is open elsewhere ({by}), so it can only be read here. Close it there and open it again.</source>
        <translation>此记录簿已在别处打开（{by}），此处只能读取。请在那里关闭后重新打开。</translation>
    </message>
    <message>
        <source>This book is open for reading only. To write in it, free the file&apos;s permissions and open it again.</source>
        <translation>此记录簿以只读方式打开。如要写入，请解除文件权限限制后重新打开。</translation>
    </message>
    <message>
        <source>This book is damaged ({problem}) and is open for reading only. Back it up, then salvage what can be read into a new book.</source>
        <translation>此记录簿已损坏（{problem}），以只读方式打开。请先备份，再把还能读取的内容抢救到新记录簿中。</translation>
    </message>
    <message>
        <source>This book lies on a network drive, where a break can lose the last entry. Keep it on this computer.</source>
        <translation>此记录簿位于网络驱动器上，连接中断可能丢失最后一个条目。请保存在本机。</translation>
    </message>
    <message>
        <source>This book was brought up to date from version {from} to {to}. The copy from before is {backup}.</source>
        <translation>此记录簿已从版本 {from} 更新到 {to}。更新前的副本为 {backup}。</translation>
    </message>
    <message>
        <source>The program or the computer stopped without closing this book. All finished entries are here.</source>
        <translation>程序或电脑在未关闭此记录簿时停止。已完成的条目全部都在。</translation>
    </message>
    <message>
        <source>{place}: the {quantity} stood at {value} for {lasted}. A room is never that still: check the sensor&apos;s battery and contact.</source>
        <translation>{place}：{quantity} 停在 {value} 达 {lasted}。没有哪个房间会如此不变：请检查传感器的电池和接触。</translation>
    </message>
    <message>
        <source>{place}: the humidity jumped by {by} on {at} and stayed there, while the temperature did not. Was a battery changed, the sensor moved, or the room set to another humidity? A salt-bag check will tell.</source>
        <translation>{place}：湿度在 {at} 跳变 {by} 并保持不变，而温度没有变化。是否换过电池、移动过传感器，或改过房间的湿度设定？盐袋校验可以判明。</translation>
    </message>
    <message>
        <source>{first} and {second} disagree over {hours} hours: {humidity_apart} of humidity apart. Check both over a salt slurry before you believe either.</source>
        <translation>{first} 与 {second} 在 {hours} 小时内不一致：湿度相差 {humidity_apart}。采信任何一个之前，请用湿盐糊校验两者。</translation>
    </message>
    <message>
        <source>{place} says {stated}, but the weight losses of {pieces} pieces speak for {implied} ({implied_low} to {implied_high}). Check the sensor.</source>
        <translation>{place} 显示 {stated}，但 {pieces} 块肉的失重表明为 {implied}（{implied_low} 至 {implied_high}）。请检查传感器。</translation>
    </message>
    <message>
        <source>{place}: the pieces give off {water_per_day} of water a day, more than the {capacity_per_day} it can carry out. Expect damp air and slow drying.</source>
        <translation>{place}：肉块每天放出 {water_per_day} 水分，多于其每天可排出的 {capacity_per_day}。空气会偏湿，风干会变慢。</translation>
    </message>
    <message>
        <source>{place}: the pieces give off only {water_per_day} of water a day. With so little in it the air may dry their surface too fast: watch the humidity.</source>
        <translation>{place}：肉块每天只放出 {water_per_day} 水分。挂得这么少，空气可能使表面干得过快：请留意湿度。</translation>
    </message>
    <message>
        <source>{place}: {pieces} pieces for {places} places.</source>
        <translation>{place}：{pieces} 块肉，只有 {places} 个挂位。</translation>
    </message>
    <message>
        <source>{joining} wet pieces would hang with {nearly_dry} nearly dry ones: the water to carry out rises from {water_now} to {water_then} a day, and the dry ones would take some of it up. Hang them elsewhere, or a week apart.</source>
        <translation>{joining} 块湿肉将与 {nearly_dry} 块快干好的肉挂在一起：每天要排出的水分从 {water_now} 升到 {water_then}，干的肉还会吸回一部分。请挂到别处，或错开一周。</translation>
    </message>
    <message>
        <source>The day rules for this way of curing disagree: {shortest} to {longest}. Choose one and keep it with the batch.</source>
        <translation>这种腌法的天数规则互相不一致：{shortest} 至 {longest}。请选定一条，并在该批次中一直沿用。</translation>
    </message>
    <message>
        <source>This day rule belongs to another way of curing. Rules by weight come from burying in salt, rules by thickness mostly from weighed cures.</source>
        <translation>这条天数规则属于另一种腌法。按重量的规则来自埋盐腌制，按厚度的规则多来自定量腌制。</translation>
    </message>
    <message>
        <source>The day rules ({shortest} to {longest}) lie outside what salt diffusion suggests ({p10} to {p90}, half-way {p50}).</source>
        <translation>天数规则（{shortest} 至 {longest}）不在盐分扩散所示范围之内（{p10} 至 {p90}，中位 {p50}）。</translation>
    </message>
    <message>
        <source>{planned} is planned; diffusion suggests {p50} ({p10} to {p90}). The centre may get too little: give it longer or rest it cold afterwards.</source>
        <translation>计划为 {planned}；按扩散应为 {p50}（{p10} 至 {p90}）。中心可能入盐不足：请延长时间，或腌后低温静置。</translation>
    </message>
    <message>
        <source>{planned} in more salt than it needs is longer than {p90}, when the piece passes {wanted}. Buried in salt, time is the dose.</source>
        <translation>在过量的盐中计划腌 {planned}，长于 {p90}，届时肉块会超过 {wanted}。埋盐腌制时，时间就是用量。</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, warmer than {limit}. Move it to a colder place.</source>
        <translation>腌制温度为 {temperature}，高于 {limit}。请移到更冷的地方。</translation>
    </message>
    <message>
        <source>The cure is at {temperature}, colder than {limit}: salt moves slowly there, give it longer.</source>
        <translation>腌制温度为 {temperature}，低于 {limit}：盐分在此温度下移动缓慢，请延长时间。</translation>
    </message>
    <message>
        <source>Frozen for {paused}: the cure stood still and that time is added.</source>
        <translation>冷冻了 {paused}：其间腌制停止，这段时间已另加。</translation>
    </message>
    <message>
        <source>At {temperature} the piece is frozen and the cure stands still. No end can be given until it is thawed.</source>
        <translation>在 {temperature} 下肉块冻结，腌制停止。解冻之前无法给出结束时间。</translation>
    </message>
    <message>
        <source>Only the thickness is known; salt coming in at the ends is not counted. Enter width and length for a better figure.</source>
        <translation>只知道厚度；从两端进入的盐没有计入。输入宽度和长度可得到更准的数值。</translation>
    </message>
    <message>
        <source>With {fat} fat most salt goes into the lean, and more slowly than the figures say.</source>
        <translation>脂肪占 {fat} 时，盐大多进入瘦肉，而且比数值所示更慢。</translation>
    </message>
    <message>
        <source>With skin all round no salt can get in. Take the skin off one side.</source>
        <translation>四面带皮，盐无法进入。请去掉一面的皮。</translation>
    </message>
    <message>
        <source>{salt} is more than the water of the meat can hold ({most}). Ask for less.</source>
        <translation>{salt} 超过了肉中水分能容纳的量（{most}）。请降低要求。</translation>
    </message>
    <message>
        <source>The thickness must be between 1 mm and 500 mm.</source>
        <translation>厚度必须在 1 mm 至 500 mm 之间。</translation>
    </message>
    <message>
        <source>Width and length must be at least the thickness, which is the shortest side, and at most 2 m.</source>
        <translation>宽度和长度不得小于厚度（最短边），且不超过 2 m。</translation>
    </message>
    <message>
        <source>The salt must be above 0 and at most 20 % of the meat.</source>
        <translation>盐必须大于 0，且不超过肉重的 20 %。</translation>
    </message>
    <message>
        <source>The temperature of a cure must be between -40 and 45 °C.</source>
        <translation>腌制温度必须在 -40 至 45 °C 之间。</translation>
    </message>
    <message>
        <source>The liquid around the meat must be between none and 20 times the meat.</source>
        <translation>肉周围的液体必须在零至肉重的 20 倍之间。</translation>
    </message>
    <message>
        <source>The fat must be between 0 and 95 %.</source>
        <translation>脂肪必须在 0 至 95 % 之间。</translation>
    </message>
    <message>
        <source>&quot;Even&quot; must mean between 50 and 99 % of the mean at the centre.</source>
        <translation>“均匀”须指中心达到平均值的 50 至 99 %。</translation>
    </message>
    <message>
        <source>The planned time must be between none and ten years.</source>
        <translation>计划时间必须在零至十年之间。</translation>
    </message>
    <message>
        <source>The day rule &quot;{place}&quot; is not known. Choose one from the list.</source>
        <translation>不认识天数规则“{place}”。请从列表中选择。</translation>
    </message>
    <message>
        <source>{loss} in {took}, {per_day} a day, is fast (up to {usual_most} a day is usual). The inside may be behind the outside: cut one or rest it and weigh again.</source>
        <translation>{took} 内失重 {loss}，每天 {per_day}，偏快（通常每天不超过 {usual_most}）。内部可能落后于外部：切开一块看看，或静置后再称。</translation>
    </message>
    <message>
        <source>The target is reached ({loss}), but the centre feels soft. Rest it so that it evens out, and look again.</source>
        <translation>已达到目标（{loss}），但中心摸起来还软。请静置使其均匀，再查看。</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day). With {fat} fat there is little water left to lose: a fatty piece can be as dry as it gets below its target.</source>
        <translation>在 {loss} 处几乎不再变化（每天 {per_day}）。脂肪占 {fat} 时可失的水分所剩无几：肥的肉块可能在未达目标时就已干到头。</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day), though the piece is lean. Ask the air first: humidity {humidity}. In wet air it stops before it is dry.</source>
        <translation>在 {loss} 处几乎不再变化（每天 {per_day}），而这块肉是瘦的。先看空气：湿度 {humidity}。空气潮湿时，还没干就会停下。</translation>
    </message>
    <message>
        <source>Nearly flat at {loss} ({per_day} a day) with a soft centre: a dry rim may hold the water in. Rest it in a bag, then dry on in wetter air.</source>
        <translation>在 {loss} 处几乎不再变化（每天 {per_day}），中心却是软的：可能是外面结了硬壳，把水分锁在里面。请装袋静置，再在较湿的空气中继续风干。</translation>
    </message>
    <message>
        <source>The loss levels off near {levels_off}; the target of {target} is not in sight in this air. Change the air or the target.</source>
        <translation>失重在 {levels_off} 附近趋平；以目前的空气看不到达到目标 {target} 的可能。请改变空气或目标。</translation>
    </message>
    <message>
        <source>It weighs {net}, more than at its start ({start}). Was it washed, coated or dressed? Enter that, or correct the weighing.</source>
        <translation>现重 {net}，比起始时（{start}）还重。是否清洗、裹涂或装过肠衣网套？请输入该事件，或更正称重。</translation>
    </message>
    <message>
        <source>{net} is less than the dry matter of {start} at the start. Look for a wrong weight, a tare or a cut that was not entered.</source>
        <translation>{net} 少于起始 {start} 所含的干物质。请查找是否有称错、皮重错误或未记录的切取。</translation>
    </message>
    <message>
        <source>The raw weight is not known; {start} is reckoned from a later weight and a usual loss in the cure.</source>
        <translation>鲜重未知；{start} 是由后来的重量和腌制时的通常失重推算的。</translation>
    </message>
    <message>
        <source>Buried in salt, the amount put on says little about what went in. Salt and water activity are guesses here: have them measured.</source>
        <translation>埋盐腌制时，上盐量说明不了进盐量。这里的含盐量和水分活度都是猜测：请送检。</translation>
    </message>
    <message>
        <source>The water activity is an estimate from weights and salt. A rule that asks for it asks for a measurement.</source>
        <translation>水分活度是根据重量和盐得出的估计。要求水分活度的规定，要的是测量值。</translation>
    </message>
    <message>
        <source>Measured {measured}, estimated {low} to {high}. Look at the sample&apos;s place, the instrument&apos;s check, the salt and the fat entered.</source>
        <translation>测得 {measured}，估计为 {low} 至 {high}。请检查取样位置、仪器校验以及输入的盐和脂肪。</translation>
    </message>
    <message>
        <source>The weighings were not in order of time; they were sorted.</source>
        <translation>各次称重不按时间顺序，已经排序。</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to see the evidence.</source>
        <translation>{place} 的数值不可能成立。请更正后再看依据。</translation>
    </message>
    <message>
        <source>At {temperature} the piece spends about {time} between {low} and {high}, where microbes grow.</source>
        <translation>在 {temperature} 下，肉块约有 {time} 处于 {low} 至 {high} 之间，微生物会在此范围内生长。</translation>
    </message>
    <message>
        <source>About {time} in this warmth is longer than the {guide} that a guide (for fish) allows ready-to-eat food.</source>
        <translation>在此温度下约 {time}，长于一份（针对鱼类的）指南对即食食品允许的 {guide}。</translation>
    </message>
    <message>
        <source>The piece may still be wetter than a water activity of {limit}. Dry it further in the cold before warming it.</source>
        <translation>肉块可能仍比水分活度 {limit} 更湿。升温之前请先在低温下继续风干。</translation>
    </message>
    <message>
        <source>In warm air of {humidity} a thick piece can dry hard outside and stay wet inside.</source>
        <translation>在湿度 {humidity} 的温热空气中，厚肉块可能外面干硬、里面仍湿。</translation>
    </message>
    <message>
        <source>Warming at the end does not undo a toxin that Staphylococcus aureus has left.</source>
        <translation>最后加热并不能消除金黄色葡萄球菌留下的毒素。</translation>
    </message>
    <message>
        <source>At {temperature} the piece begins to cook rather than dry.</source>
        <translation>在 {temperature} 下，肉块开始变熟，而不是风干。</translation>
    </message>
    <message>
        <source>{target} is more than the water left can give; it levels off near {levels_off}.</source>
        <translation>{target} 超过剩余水分所能达到的；它会在 {levels_off} 附近趋平。</translation>
    </message>
    <message>
        <source>The loss wanted is already reached ({loss}).</source>
        <translation>想要的失重率已经达到（{loss}）。</translation>
    </message>
    <message>
        <source>The value of {place} cannot be. Correct it to get an answer.</source>
        <translation>{place} 的数值不可能成立。请更正后再求答案。</translation>
    </message>
    <message>
        <source>This is more salt than the water can dissolve ({most} of the water phase).</source>
        <translation>盐多于水分能溶解的量（水相的 {most}）。</translation>
    </message>
    <message>
        <source>The wet end of the estimate is above {limit}, the lowest water activity at which {name} grows.</source>
        <translation>估计范围的湿端高于 {limit}，即 {name} 能生长的最低水分活度。</translation>
    </message>
    <message>
        <source>The weighing of {at} lies off the curve by {off_by}. Was the tare right, the hook on the scale, the scale level? Weigh again or correct the entry.</source>
        <translation>{at} 的称重偏离曲线 {off_by}。皮重对吗？挂钩是否压在秤上？秤放平了吗？请重新称重或更正条目。</translation>
    </message>
    <message>
        <source>{pieces} pieces weighed on {at} stepped by {shift} the same way. That points to the scale or its zero, not to the meat: check it with a known weight.</source>
        <translation>{at} 称的 {pieces} 块肉都朝同一方向偏了 {shift}。问题可能在秤或其零点，而不在肉：请用已知砝码检查。</translation>
    </message>
    <message>
        <source>The loss has nearly stopped ({rate_per_day} a day). A firm piece may be finished or fat; a soft one may have dried hard outside; a wet chamber slows all.</source>
        <translation>失重几乎停止（每天 {rate_per_day}）。硬实的肉块可能已做好或偏肥；软的可能外面干硬；风干室潮湿则全都变慢。</translation>
    </message>
    <message>
        <source>It lost {loss} in {over}: the outside is drying faster than the inside can follow. Look for a hard rim; more humidity or a rest in a bag evens it out.</source>
        <translation>{over} 内失重 {loss}：外部干得比内部跟得上的更快。请查看是否有硬壳；提高湿度或装袋静置可使其均匀。</translation>
    </message>
    <message>
        <source>It weighs {gain} more than before ({at}). Was it washed, coated or dressed? Enter that as an event, or correct the weighing.</source>
        <translation>比之前（{at}）重了 {gain}。是否清洗、裹涂或装过肠衣网套？请作为事件输入，或更正称重。</translation>
    </message>
    <message>
        <source>The losses speak for about {implied} in the air, the log says {logged}. Check the hygrometer over a salt slurry.</source>
        <translation>失重表明空气湿度约为 {implied}，记录却是 {logged}。请用湿盐糊校验湿度计。</translation>
    </message>
    <message>
        <source>The target of {target} lies beyond where this piece levels off ({levels_off}). Drier air or a lower target would change that.</source>
        <translation>目标 {target} 超出这块肉趋平之处（{levels_off}）。空气更干或目标更低才会改变。</translation>
    </message>
    <message>
        <source>The weight that the target counts from ({reference}) was never taken. Enter it, or count from another weight.</source>
        <translation>目标所依据的重量（{reference}）从未称过。请输入，或改以另一重量为基准。</translation>
    </message>
    <message>
        <source>An event ({event}, {at}) has no weights, so the start could not be shared out. Enter the net weight before and after.</source>
        <translation>有一个事件（{event}，{at}）没有重量，因此无法分摊起始重量。请输入之前和之后的净重。</translation>
    </message>
    <message>
        <source>The weighing of {at} has no tare; the last known one was taken. Correct it if the casing or net changed.</source>
        <translation>{at} 的称重没有皮重，已沿用最近已知的皮重。如果肠衣或网套换过，请更正。</translation>
    </message>
    <message>
        <source>{place} has no code. Give it two or three letters or digits.</source>
        <translation>{place} 没有编号。请用两三个字母或数字编号。</translation>
    </message>
    <message>
        <source>The code {place} is taken already. Choose another.</source>
        <translation>编号 {place} 已被使用。请另选一个。</translation>
    </message>
    <message>
        <source>The code {place} stands twice. Give each its own.</source>
        <translation>编号 {place} 出现了两次。请分别编号。</translation>
    </message>
    <message>
        <source>{place} has no name. Enter one.</source>
        <translation>{place} 没有名称。请输入。</translation>
    </message>
    <message>
        <source>The name of {place} is taken already. Choose another.</source>
        <translation>名称 {place} 已被使用。请另选一个。</translation>
    </message>
    <message>
        <source>Say in a few words why; the reason is kept with the change.</source>
        <translation>请简单说明原因；原因会随更改一起保存。</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>尚未输入任何内容。</translation>
    </message>
    <message>
        <source>{place} is not a number. Type digits.</source>
        <translation>{place} 不是数字。请输入数字。</translation>
    </message>
    <message>
        <source>{place} lies in the future. Check the day and time.</source>
        <translation>{place} 在将来。请检查日期和时间。</translation>
    </message>
    <message>
        <source>The weight of {place} must be more than nothing.</source>
        <translation>{place} 的重量必须大于零。</translation>
    </message>
    <message>
        <source>The weight of {place} is below nothing. Check it.</source>
        <translation>{place} 的重量小于零。请检查。</translation>
    </message>
    <message>
        <source>The weight of {place} is far outside what a piece weighs. Check the unit.</source>
        <translation>{place} 的重量远超一块肉的范围。请检查单位。</translation>
    </message>
    <message>
        <source>The tare of {place} is as heavy as what is on the scale. Check both.</source>
        <translation>{place} 的皮重与秤上的重量一样大。请检查两者。</translation>
    </message>
    <message>
        <source>The thickness of {place} must be more than nothing.</source>
        <translation>{place} 的厚度必须大于零。</translation>
    </message>
    <message>
        <source>The share of {place} must lie between 0 and 100 %.</source>
        <translation>{place} 的比例必须在 0 至 100 % 之间。</translation>
    </message>
    <message>
        <source>The loss aimed for of {place} must lie between 0 and 100 %.</source>
        <translation>{place} 的目标失重率必须在 0 至 100 % 之间。</translation>
    </message>
    <message>
        <source>A score goes from 2 too little to 2 too much.</source>
        <translation>评分从“太少 2 级”到“太多 2 级”。</translation>
    </message>
    <message>
        <source>The count of {place} is below nothing.</source>
        <translation>{place} 的数量小于零。</translation>
    </message>
    <message>
        <source>The count of {place} must be at least one.</source>
        <translation>{place} 的数量至少为一。</translation>
    </message>
    <message>
        <source>The price of {place} is below nothing.</source>
        <translation>{place} 的价格小于零。</translation>
    </message>
    <message>
        <source>The lower end of {place} lies above its upper end. Swap them.</source>
        <translation>{place} 的下限高于上限。请对调。</translation>
    </message>
    <message>
        <source>{place} ends before it starts. Check the days.</source>
        <translation>{place} 的结束早于开始。请检查日期。</translation>
    </message>
    <message>
        <source>The text of {place} is too long. Shorten it.</source>
        <translation>{place} 的文字太长。请缩短。</translation>
    </message>
    <message>
        <source>The photo of {place} is too large. Take a smaller copy.</source>
        <translation>{place} 的照片太大。请用较小的副本。</translation>
    </message>
    <message>
        <source>The recipe of {place} is empty.</source>
        <translation>{place} 的配方是空的。</translation>
    </message>
    <message>
        <source>The weight that {place} counts from cannot be known at this point.</source>
        <translation>{place} 所依据的重量此时无法得知。</translation>
    </message>
    <message>
        <source>Name at least two pieces.</source>
        <translation>请至少指定两块肉。</translation>
    </message>
    <message>
        <source>The pieces belong to different batches. Weigh only pieces of one batch as one.</source>
        <translation>这些肉块属于不同批次。只能把同一批次的肉块合并称重。</translation>
    </message>
    <message>
        <source>{place} was discarded already.</source>
        <translation>{place} 已经丢弃。</translation>
    </message>
    <message>
        <source>{place} was cut or weighed with others and carries on under another code. Open that piece.</source>
        <translation>{place} 已分切或与其他肉块合并称重，现用另一编号。请打开那块肉。</translation>
    </message>
    <message>
        <source>Cutting and weighing as one have forms of their own.</source>
        <translation>分切和合并称重有各自的表单。</translation>
    </message>
    <message>
        <source>{place} is in the book already. Correct it instead.</source>
        <translation>{place} 已在记录簿中。请改为更正它。</translation>
    </message>
    <message>
        <source>The stage {place} has started, so it stays as it is.</source>
        <translation>阶段 {place} 已经开始，因此保持不变。</translation>
    </message>
    <message>
        <source>The stage {place} has ended already.</source>
        <translation>阶段 {place} 已经结束。</translation>
    </message>
    <message>
        <source>The stage {place} belongs to another batch.</source>
        <translation>阶段 {place} 属于另一批次。</translation>
    </message>
    <message>
        <source>That is more than is left in {place}. Check the amount, or count the pack again.</source>
        <translation>超过了 {place} 的剩余量。请检查数量，或重新清点该成品包。</translation>
    </message>
    <message>
        <source>{place} refers to itself.</source>
        <translation>{place} 引用了自身。</translation>
    </message>
    <message>
        <source>This is not a recipe file: it is no JSON text.</source>
        <translation>这不是配方文件：不是 JSON 文本。</translation>
    </message>
    <message>
        <source>The recipe says version &quot;{found}&quot;; this program reads {wanted}. Was it written by a newer Saltloft?</source>
        <translation>配方标明版本“{found}”；本程序读取 {wanted}。它是否由较新的 Saltloft 写成？</translation>
    </message>
    <message>
        <source>{place} is missing: {wanted}.</source>
        <translation>缺少 {place}：{wanted}。</translation>
    </message>
    <message>
        <source>{place} means nothing here. Known are: {wanted}. Mend the spelling, so that nothing is left out.</source>
        <translation>{place} 在此没有含义。已知的有：{wanted}。请改正拼写，以免遗漏内容。</translation>
    </message>
    <message>
        <source>{place} is {found}; needed is: {wanted}.</source>
        <translation>{place} 是 {found}；需要的是：{wanted}。</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;; known are: {wanted}.</source>
        <translation>{place} 写的是“{found}”；已知的有：{wanted}。</translation>
    </message>
    <message>
        <source>{place} says &quot;{found}&quot;, which cannot be read as a quantity ({reason}). Write it like this: {wanted}.</source>
        <translation>{place} 写的是“{found}”，无法读作数量（{reason}）。请这样写：{wanted}。</translation>
    </message>
    <message>
        <source>The recipe has no ingredients yet. Add the first.</source>
        <translation>配方还没有配料。请添加第一项。</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is not in the catalogue. Choose another, or describe your own from its label.</source>
        <translation>目录中没有“{found}”。请另选一项，或按标签描述您自己的配料。</translation>
    </message>
    <message>
        <source>{ingredient} stands in the recipe twice. Both count: is that meant?</source>
        <translation>{ingredient} 在配方中出现两次。两项都计入：是有意的吗？</translation>
    </message>
    <message>
        <source>Two ingredients of your own share the id {found}. Rename one.</source>
        <translation>您自己的两项配料用了同一标识 {found}。请给其中一项改名。</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the nitrite and nitrate from its label. Curing salts differ tenfold.</source>
        <translation>{ingredient}：浓度多少？请按标签输入亚硝酸盐和硝酸盐含量。各种腌制盐可相差十倍。</translation>
    </message>
    <message>
        <source>{ingredient}: a strength of {found} looks like a proportion typed as percent. 0.0625 on a sheet is 6.25 %. Enter what the label says.</source>
        <translation>{ingredient}：浓度 {found} 像是把比例当成百分数输入。单子上的 0.0625 即 6.25 %。请按标签输入。</translation>
    </message>
    <message>
        <source>{ingredient}: no curing salt is sold at {found}; labels run from {low} to {high}. Read the label again.</source>
        <translation>{ingredient}：没有 {found} 的腌制盐出售；标签上为 {low} 至 {high}。请再看一遍标签。</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {strength} nitrite, from its name only. Enter the strength from the label in your hand.</source>
        <translation>{ingredient}：仅凭名称按亚硝酸盐 {strength} 计算。请输入手中标签上的浓度。</translation>
    </message>
    <message>
        <source>{ingredient}: how strong is it? Enter the percent by volume from the label.</source>
        <translation>{ingredient}：度数多少？请按标签输入体积百分比。</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is stronger than distilling goes. Is it proof?</source>
        <translation>{ingredient}：体积百分比 {found} % 超过蒸馏能达到的度数。是 proof 吗？</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is rare. If the label says proof, enter it as proof with its country.</source>
        <translation>{ingredient}：体积百分比 {found} % 很少见。如果标签写的是 proof，请连同国家按 proof 输入。</translation>
    </message>
    <message>
        <source>{ingredient}: {found} % by volume is a spirit&apos;s strength, not a wine&apos;s.</source>
        <translation>{ingredient}：体积百分比 {found} % 是烈酒的度数，不是葡萄酒的。</translation>
    </message>
    <message>
        <source>{ingredient}: {found} is more than pure salt holds. Milligrams taken for grams?</source>
        <translation>{ingredient}：{found} 超过纯盐的含量。是不是把毫克当成了克？</translation>
    </message>
    <message>
        <source>{ingredient}: how salty is it? Enter salt or sodium from its label.</source>
        <translation>{ingredient}：有多咸？请按标签输入盐或钠含量。</translation>
    </message>
    <message>
        <source>{ingredient}: reckoned at {low} to {high} salt. Enter the sodium from the label to narrow that.</source>
        <translation>{ingredient}：按含盐 {low} 至 {high} 计算。输入标签上的钠含量可缩小范围。</translation>
    </message>
    <message>
        <source>{ingredient}: the parts add up to {found}. Check the label&apos;s figures.</source>
        <translation>{ingredient}：各部分合计为 {found}。请检查标签上的数字。</translation>
    </message>
    <message>
        <source>{ingredient}: nothing in a kitchen weighs {found} g to the millilitre.</source>
        <translation>{ingredient}：厨房里没有每毫升重 {found} g 的东西。</translation>
    </message>
    <message>
        <source>{ingredient}: no density is known, so a volume cannot be turned into weight. Please weigh it.</source>
        <translation>{ingredient}：密度未知，因此无法把体积换算成重量。请称重。</translation>
    </message>
    <message>
        <source>{ingredient}: its label counts by volume. Enter its density, or weigh 100 mL of it.</source>
        <translation>{ingredient}：其标签按体积计。请输入密度，或称一下 100 mL 的重量。</translation>
    </message>
    <message>
        <source>&quot;{found}&quot; is no measure with a known size. Spoons differ by country: choose one from the list, or weigh.</source>
        <translation>“{found}”不是容量已知的量具。各国的匙大小不同：请从列表中选择，或称重。</translation>
    </message>
    <message>
        <source>{ingredient}: the amount is nothing. Enter it or take the line out.</source>
        <translation>{ingredient}：用量为零。请输入用量或删去此行。</translation>
    </message>
    <message>
        <source>There is no water to count from. Add the water of the brine.</source>
        <translation>没有可作基准的水。请添加盐水所用的水。</translation>
    </message>
    <message>
        <source>Water cannot be a share of itself. Enter it by weight, by volume or as a share of the meat.</source>
        <translation>水不能以自身为基准取比例。请按重量、体积或占肉重的比例输入。</translation>
    </message>
    <message>
        <source>Some amounts are fixed and stay the same for any weight of meat. Say for how much meat they were written, and they follow.</source>
        <translation>有些用量是固定的，肉再多也不变。请说明它们是按多少肉写的，之后会随之换算。</translation>
    </message>
    <message>
        <source>How much pickle is pumped in? Enter it as a share of the meat.</source>
        <translation>注射多少腌液？请按占肉重的比例输入。</translation>
    </message>
    <message>
        <source>How much pickle does the meat take up? Weigh a piece before and after, or use the method at equilibrium.</source>
        <translation>肉会吸收多少腌液？请在前后各称一块，或使用平衡法。</translation>
    </message>
    <message>
        <source>{found} looks like a proportion typed as percent: 0.1 on a sheet is 10 %.</source>
        <translation>{found} 像是把比例当成百分数输入：单子上的 0.1 即 10 %。</translation>
    </message>
    <message>
        <source>Meat does not take up {found} of its weight.</source>
        <translation>肉不会吸收相当于自重 {found} 的腌液。</translation>
    </message>
    <message>
        <source>{found} of the meat&apos;s weight is a lot of pickle.</source>
        <translation>腌液占肉重的 {found}，偏多。</translation>
    </message>
    <message>
        <source>Buried in salt, what goes on is known and what goes in is not: the doses here are what you put on.</source>
        <translation>埋盐腌制时，上了多少盐可知，进了多少不可知：这里的用量指您上的盐。</translation>
    </message>
    <message>
        <source>The rubs add up to {found}, not to the whole.</source>
        <translation>各次擦盐合计为 {found}，不等于总量。</translation>
    </message>
    <message>
        <source>The rubs must follow each other in time.</source>
        <translation>各次擦盐必须按时间先后排列。</translation>
    </message>
    <message>
        <source>{place}: there is no such rub in the recipe.</source>
        <translation>{place}：配方中没有这一次擦盐。</translation>
    </message>
    <message>
        <source>Raw meat seldom holds {found} of water.</source>
        <translation>鲜肉很少含水 {found}。</translation>
    </message>
    <message>
        <source>Skin is seldom {found} of a piece.</source>
        <translation>肉皮很少占到肉块的 {found}。</translation>
    </message>
    <message>
        <source>No meat loses {found} of its weight by drying.</source>
        <translation>没有肉会因风干失去自重的 {found}。</translation>
    </message>
    <message>
        <source>Enter the weight of the meat.</source>
        <translation>请输入肉的重量。</translation>
    </message>
    <message>
        <source>A piece without a weight cannot be dosed.</source>
        <translation>没有重量的肉块无法计算用量。</translation>
    </message>
    <message>
        <source>A piece of {found}: grams, or kilograms?</source>
        <translation>一块肉 {found}：是克，还是千克？</translation>
    </message>
    <message>
        <source>A piece of {found}: kilograms, or grams?</source>
        <translation>一块肉 {found}：是千克，还是克？</translation>
    </message>
    <message>
        <source>{amount} of {ingredient} on a {step} scale is wrong by up to {error}. Use a finer scale, or blend a larger batch first.</source>
        <translation>用分度值 {step} 的秤称 {amount} {ingredient}，误差可达 {error}。请用更精细的秤，或先配制较大一份混合料。</translation>
    </message>
    <message>
        <source>On a {step} scale a piece&apos;s cure would show as nothing. Use a finer scale, or blend a larger batch first.</source>
        <translation>在分度值 {step} 的秤上，一块肉的腌料会显示为零。请用更精细的秤，或先配制较大一份混合料。</translation>
    </message>
    <message>
        <source>Your wish for {what} ({asked}) cannot be met with what you hold: it comes to {found}, short by {by}.</source>
        <translation>您要求的{what}（{asked}）在您固定的各行之下无法达到：结果为 {found}，差 {by}。</translation>
    </message>
    <message>
        <source>What you hold brings more {what} than the limit of {asked}: {found}.</source>
        <translation>您固定的各行带来的{what}超过限量 {asked}：{found}。</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about ten times what is usual. A slipped decimal?</source>
        <translation>{ingredient}：占肉重的 {found}，约为通常的十倍。小数点错位了吗？</translation>
    </message>
    <message>
        <source>{ingredient}: {found} of the meat is about a tenth of what is usual. A slipped decimal?</source>
        <translation>{ingredient}：占肉重的 {found}，约为通常的十分之一。小数点错位了吗？</translation>
    </message>
    <message>
        <source>{ingredient}: {found} looks like a proportion typed as percent. 0.025 on a sheet is 2.5 %.</source>
        <translation>{ingredient}：{found} 像是把比例当成百分数输入。单子上的 0.025 即 2.5 %。</translation>
    </message>
    <message>
        <source>{ingredient} at {found} of the meat: that is an amount for salt, not for a strong curing salt. It would be {nitrite} nitrite.</source>
        <translation>{ingredient} 占肉重的 {found}：这是普通盐的用量，不是高浓度腌制盐的用量。亚硝酸盐将达 {nitrite}。</translation>
    </message>
    <message>
        <source>{ingredient}: with tablespoons the dose is {found}. Teaspoons would be usual. Please weigh it.</source>
        <translation>{ingredient}：用汤匙计，用量为 {found}。通常用茶匙。请称重。</translation>
    </message>
    <message>
        <source>{ingredient} is measured by the spoon. Spoons differ by a quarter: weigh it.</source>
        <translation>{ingredient} 是按匙量取的。匙的大小可差四分之一：请称重。</translation>
    </message>
    <message>
        <source>{ingredient} is undiluted. A gram too much is a poisonous dose: a ready-mixed curing salt forgives more.</source>
        <translation>{ingredient} 未稀释。多一克就是中毒剂量：预混的腌制盐更容许误差。</translation>
    </message>
    <message>
        <source>{ingredient} holds {strength} nitrite, so this gives {found} only. Is the amount meant for a strong curing salt?</source>
        <translation>{ingredient} 含亚硝酸盐 {strength}，因此只得到 {found}。这个用量是不是按高浓度腌制盐写的？</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>亚硝酸盐为 {found}。已收录的任何产品限量都不允许超过 {limit}。</translation>
    </message>
    <message>
        <source>Nitrate comes to {found}. No limit on file for any product allows more than {limit}.</source>
        <translation>硝酸盐为 {found}。已收录的任何产品限量都不允许超过 {limit}。</translation>
    </message>
    <message>
        <source>Nitrite comes to {found}; above {limit} is allowed for few products. Choose the limits that apply to you.</source>
        <translation>亚硝酸盐为 {found}；只有少数产品允许高于 {limit}。请选择适用于您的限量。</translation>
    </message>
    <message>
        <source>There is no nitrite or nitrate in this recipe.</source>
        <translation>此配方不含亚硝酸盐或硝酸盐。</translation>
    </message>
    <message>
        <source>No limits are chosen, so the dose is checked against none. Choose the ones that apply to you.</source>
        <translation>没有选择限量，因此用量未与任何限量比对。请选择适用于您的限量。</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; whole muscle is seldom cured with less than {limit} (common practice).</source>
        <translation>盐为肉重的 {found}；整块肉很少用低于 {limit} 的盐腌制（行业惯例）。</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat; above {limit} few people eat it (common practice).</source>
        <translation>盐为肉重的 {found}；高于 {limit} 时很少有人爱吃（行业惯例）。</translation>
    </message>
    <message>
        <source>Salt comes to {found} of the meat. With weighed salt that is a slip; for burying in salt choose that method.</source>
        <translation>盐为肉重的 {found}。定量用盐时这是笔误；如果是埋盐腌制，请选择该方法。</translation>
    </message>
    <message>
        <source>Sugar comes to {found} of the meat; more than {limit} is unusual.</source>
        <translation>糖为肉重的 {found}；超过 {limit} 不常见。</translation>
    </message>
    <message>
        <source>Accelerator comes to {found}; usual is about half a gram to the kilogram.</source>
        <translation>发色助剂为 {found}；通常每千克约半克。</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, above the limit of {limit}.</source>
        <translation>{set}：{substance} 为 {found}，高于限量 {limit}。</translation>
    </message>
    <message>
        <source>{set}: {substance} is not permitted; the recipe brings {found}.</source>
        <translation>{set}：{substance} 不准使用；配方带入 {found}。</translation>
    </message>
    <message>
        <source>{set}: {substance} keeps the limit of {limit}, but with the spread of what you measure it may come to {found}.</source>
        <translation>{set}：{substance} 符合限量 {limit}，但计入量取误差后可能达到 {found}。</translation>
    </message>
    <message>
        <source>{set}: {substance} comes to {found}, below the minimum of {limit}.</source>
        <translation>{set}：{substance} 为 {found}，低于最低要求 {limit}。</translation>
    </message>
    <message>
        <source>{set}: the limit of {limit} for {substance} is on what a laboratory finds in the product. No sum can show it; {found} goes in.</source>
        <translation>{set}：{substance} 的限量 {limit} 针对实验室在产品中测得的量。任何计算都无法证明；添加量为 {found}。</translation>
    </message>
    <message>
        <source>{set}: the limit for {substance} is on the finished product. Enter the expected loss, or the dose is judged too low.</source>
        <translation>{set}：{substance} 的限量针对成品。请输入预期失重率，否则用量会被判得过低。</translation>
    </message>
    <message>
        <source>{set}: unverified. The issuer&apos;s own text was not read for all of it.</source>
        <translation>{set}：未核实。并未全部读过发布机构的原文。</translation>
    </message>
    <message>
        <source>{set}: not in force today.</source>
        <translation>{set}：目前不在施行期内。</translation>
    </message>
    <message>
        <source>{set}: made for another way of curing than this recipe&apos;s.</source>
        <translation>{set}：针对的腌法与此配方不同。</translation>
    </message>
    <message>
        <source>There are no limits called &quot;{found}&quot;. Choose from the list.</source>
        <translation>没有名为“{found}”的限量。请从列表中选择。</translation>
    </message>
    <message>
        <source>Skin on: {share} of the weight is taken off before the sum.</source>
        <translation>带皮：计算前已扣除重量的 {share}。</translation>
    </message>
    <message>
        <source>No piece is entered: the days are for the usual one.</source>
        <translation>未输入肉块：天数按常见的肉块计。</translation>
    </message>
    <message>
        <source>The weight is not entered: {weight} is assumed.</source>
        <translation>未输入重量：假定为 {weight}。</translation>
    </message>
    <message>
        <source>The thickness is not entered: {thickness_mm} mm is assumed.</source>
        <translation>未输入厚度：假定为 {thickness_mm} mm。</translation>
    </message>
    <message>
        <source>Nothing says how long “{place}” takes: it is planned as no time at all. Enter a time for it.</source>
        <translation>没有写明“{place}”需要多久：计划中按零时间处理。请输入时间。</translation>
    </message>
    <message>
        <source>“{place}” is made longer: the rule asks for {needed} in all, and the stages came to {days}.</source>
        <translation>“{place}”已延长：规则共要求 {needed}，而各阶段合计为 {days}。</translation>
    </message>
    <message>
        <source>The day rule of “{place}” belongs to another way of salting: days per kilogram are for burying in salt or for brine, days per centimetre for a weighed cure.</source>
        <translation>“{place}”的天数规则属于另一种上盐方式：按千克计的天数用于埋盐或盐水，按厘米计的天数用于定量腌制。</translation>
    </message>
    <message>
        <source>“{place}” has {days}, and its rule asks for {needed}. Give it the time.</source>
        <translation>“{place}”为 {days}，而其规则要求 {needed}。请给足时间。</translation>
    </message>
    <message>
        <source>The day lies in the past.</source>
        <translation>该日期已经过去。</translation>
    </message>
    <message>
        <source>It needs {days_needed} days and there are {days_available}: {shortfall} too few.</source>
        <translation>需要 {days_needed} 天，只有 {days_available} 天：差 {shortfall} 天。</translation>
    </message>
    <message>
        <source>“{place}” takes {days} days, and cannot take less.</source>
        <translation>“{place}”需要 {days} 天，不能再少。</translation>
    </message>
    <message>
        <source>Nothing says when “{place}” ends or how long it usually takes.</source>
        <translation>没有写明“{place}”何时结束或通常需要多久。</translation>
    </message>
    <message>
        <source>“{place}” repeats with more stages than follow it.</source>
        <translation>“{place}”要重复的阶段多于其后的阶段。</translation>
    </message>
    <message>
        <source>The number of rounds of “{place}” lies outside its own bounds.</source>
        <translation>“{place}”的轮数超出其自身的界限。</translation>
    </message>
    <message>
        <source>“{place}” repeats inside another repeat, which cannot be planned.</source>
        <translation>“{place}”在另一个重复之内重复，无法计划。</translation>
    </message>
    <message>
        <source>“{place}” shares a room with a stage that is not in the plan.</source>
        <translation>“{place}”要与计划中没有的阶段共用房间。</translation>
    </message>
    <message>
        <source>A minimum names the stage “{place}”, which is not in the plan.</source>
        <translation>某项最低要求指定了阶段“{place}”，而计划中没有它。</translation>
    </message>
    <message>
        <source>Two stages are called “{place}”.</source>
        <translation>有两个阶段都叫“{place}”。</translation>
    </message>
    <message>
        <source>The plan has no stage that salts.</source>
        <translation>计划中没有上盐的阶段。</translation>
    </message>
    <message>
        <source>{on_scale} is not more than the tare of {tare}. Weigh again.</source>
        <translation>{on_scale} 没有超过皮重 {tare}。请重新称重。</translation>
    </message>
    <message>
        <source>Last time it was {last}: is {on_scale} a slip of the decimal sign?</source>
        <translation>上次是 {last}：{on_scale} 是不是小数点错位？</translation>
    </message>
    <message>
        <source>{on_scale} was not expected: between {low} and {high} would be. Right piece, right tare, hook on?</source>
        <translation>{on_scale} 出乎预料：应在 {low} 至 {high} 之间。肉块对吗？皮重对吗？挂钩在吗？</translation>
    </message>
    <message>
        <source>The same number as last time. That can mean done, a coarse scale or a damp chamber.</source>
        <translation>与上次数字相同。可能是做好了、秤太粗或风干室潮湿。</translation>
    </message>
    <message>
        <source>{place} is not finished, so it cannot hang again. Record what happens to it instead.</source>
        <translation>{place} 尚未做好，因此不能重新晾挂。请改为记录它的去向。</translation>
    </message>
    <message>
        <source>{place} is packed. Take it out of its pack in Stock: hung again.</source>
        <translation>{place} 已包装。请在“库存”中把它从包中取出：重新晾挂。</translation>
    </message>
    <message>
        <source>A caution is taken on by a person: say who it is.</source>
        <translation>警告须由一个人确认：请说明是谁。</translation>
    </message>
</context>
<context>
    <name>KeepWords</name>
    <message numerus="yes">
        <source>%1: %n day(s) from opening</source>
        <translation>
            <numerusform>%1：开封后 %n 天</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n day(s) from packing</source>
        <translation>
            <numerusform>%1：包装后 %n 天</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Note: %2</source>
        <translation>%1。备注：%2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
</context>
<context>
    <name>KeepingWords</name>
    <message>
        <source>Batches</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>称重</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>事件</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>阶段</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>照片</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>决定</translation>
    </message>
    <message>
        <source>Outcomes</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>Acceptances of cautions</source>
        <translation>警告的确认</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Recipe versions</source>
        <translation>配方版本</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>配料</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Uses of ingredients</source>
        <translation>配料的使用</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>成品包</translation>
    </message>
    <message>
        <source>Moves of stock</source>
        <translation>库存变动</translation>
    </message>
    <message>
        <source>Ticks of the day&apos;s work</source>
        <translation>当日任务的勾选</translation>
    </message>
    <message>
        <source>People</source>
        <translation>人员</translation>
    </message>
    <message>
        <source>Chambers</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>传感器</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>仪器</translation>
    </message>
    <message>
        <source>Calibration checks</source>
        <translation>校验</translation>
    </message>
    <message>
        <source>Climate readings</source>
        <translation>温湿度读数</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a day with its year, %2 a clock time</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Batches: %1, pieces: %2, weighings: %3</source>
        <translation>批次：%1，肉块：%2，称重：%3</translation>
    </message>
    <message>
        <source>This backup is damaged itself, so it is not put in the place of the book. Choose another one.</source>
        <translation>此备份本身已损坏，因此不会用它替换记录簿。请选择另一个备份。</translation>
    </message>
    <message>
        <source>This backup was read from end to end and is whole.</source>
        <translation>此备份已从头到尾读取，完整无缺。</translation>
    </message>
    <message>
        <source>It brings back: %1. Last entry: %2.</source>
        <translation>它会恢复：%1。最后条目：%2。</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>There is no book now, so nothing is replaced.</source>
        <translation>目前没有记录簿，因此不会替换任何内容。</translation>
    </message>
    <message>
        <source>The book as it is now cannot be read, so what would be lost is not known.</source>
        <translation>当前的记录簿无法读取，因此不知道会丢失什么。</translation>
    </message>
    <message>
        <source>The book has now: %1.</source>
        <translation>记录簿现有：%1。</translation>
    </message>
    <message>
        <source>No change was made since this backup.</source>
        <translation>自此备份以来未作任何更改。</translation>
    </message>
    <message>
        <source>Changes made since this backup, which would be gone from the book: %1.</source>
        <translation>自此备份以来所作、将从记录簿中消失的更改：%1。</translation>
    </message>
    <message>
        <source>The book as it is now is not deleted: it stays in the same folder, with “replaced” and the moment added to its name.</source>
        <translation>当前的记录簿不会被删除：它留在同一文件夹中，文件名后加上“replaced”和时间。</translation>
    </message>
    <message>
        <source>The book is sound: its pages, indexes, links and climate roll-ups agree.</source>
        <translation>记录簿完好：页面、索引、关联和温湿度汇总均一致。</translation>
    </message>
    <message>
        <source>Your entries and readings are whole. Sums made from climate readings do not agree with them (places: %1), so charts and hours of air may be wrong. They can be made anew from the readings.</source>
        <translation>您的条目和读数完整。由温湿度读数算出的汇总与读数不一致（处数：%1），因此图表和空气小时数可能有误。可根据读数重新生成汇总。</translation>
    </message>
    <message>
        <source>The book is damaged (places found: %1; they are listed below). Write nothing more into it. Restore a backup, or salvage what can be read into a new book.</source>
        <translation>记录簿已损坏（发现处数：%1；列于下方）。请勿再写入。请恢复备份，或把还能读取的内容抢救到新记录簿中。</translation>
    </message>
    <message>
        <source>The book&apos;s own records (log, preferences, sums)</source>
        <translation>记录簿自身的记录（日志、设置、汇总）</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. No entry was found that could not be read; whole pages that are gone leave no trace, so look it through. The damaged book was not changed.</source>
        <translation>新记录簿已生成并通过检查。未发现无法读取的条目；但整页丢失不留痕迹，请通览一遍。损坏的记录簿未作更改。</translation>
    </message>
    <message>
        <source>The new book is made and passed its check. Entries that are known to be lost: %1. Look it through. The damaged book was not changed.</source>
        <translation>新记录簿已生成并通过检查。已知丢失的条目：%1。请通览一遍。损坏的记录簿未作更改。</translation>
    </message>
</context>
<context>
    <name>LimitWords</name>
    <message>
        <source>%1 (partly unverified)</source>
        <translation>%1（部分未核实）</translation>
    </message>
</context>
<context>
    <name>LossChart</name>
    <message>
        <source>days since hung</source>
        <translation>晾挂后天数</translation>
    </message>
    <message>
        <source>net weight, %1</source>
        <translation>净重，%1</translation>
    </message>
    <message>
        <source>weight lost, %</source>
        <translation>失重率，%</translation>
    </message>
    <message>
        <source>%1 · %2 net · %3 lost</source>
        <translation>%1 · 净重 %2 · 失重 %3</translation>
    </message>
    <message>
        <source>%1: forecast, 8 in 10 fall inside</source>
        <translation>%1：预测，十次有八次落在其中</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>目标 %1</translation>
    </message>
    <message>
        <source>%1: %2 lost on %3</source>
        <translation>%1：%3 时失重 %2</translation>
    </message>
    <message>
        <source>, target %1</source>
        <translation>，目标 %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Days since hung</source>
        <translation>晾挂后天数</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>净重</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>说明</translation>
    </message>
    <message>
        <source>lost of the %1, %</source>
        <translation>相对%1的失重率，%</translation>
    </message>
    <message>
        <source>day %1 · %2 net · %3 lost</source>
        <translation>第 %1 天 · 净重 %2 · 失重 %3</translation>
    </message>
    <message>
        <source>%1, done earlier</source>
        <translation>%1，较早做好</translation>
    </message>
    <message>
        <source>done earlier</source>
        <translation>较早做好</translation>
    </message>
    <message>
        <source>forecast, 8 in 10 fall inside</source>
        <translation>预测，十次有八次落在其中</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>stage</source>
        <translation>阶段</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier piece(s) for comparison</source>
        <translation>
            <numerusform>%n 块较早的肉块供比较</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ManualText</name>
    <message>
        <source>Saltloft: the manual</source>
        <translation>Saltloft：手册</translation>
    </message>
    <message>
        <source>Plan, weigh and follow cured and air-dried meat.</source>
        <translation>计划、称量并跟踪腌制和风干的肉。</translation>
    </message>
    <message>
        <source>The pictures show an invented demonstration book; no producer, batch or person in it exists.</source>
        <translation>图片显示的是虚构的演示记录簿；其中的生产者、批次和人员均不存在。</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>目录</translation>
    </message>
</context>
<context>
    <name>MixBench</name>
    <message>
        <source>nitrite 6.25 %; nitrate 4 %</source>
        <translation>nitrite 6.25 %; nitrate 4 %</translation>
    </message>
    <message>
        <source>40 % or 80 proof US</source>
        <translation>40 % 或 80 proof US</translation>
    </message>
    <message>
        <source>salt 16 % or sodium 6.3 g/100 g</source>
        <translation>salt 16 % 或 sodium 6.3 g/100 g</translation>
    </message>
    <message>
        <source>acid 5 %</source>
        <translation>acid 5 %</translation>
    </message>
</context>
<context>
    <name>MixSheetText</name>
    <message>
        <source>Weigh out</source>
        <translation>称取</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>配料</translation>
    </message>
    <message>
        <source>Scale error</source>
        <translation>秤的误差</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>已称</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> （%1）</translation>
    </message>
    <message>
        <source>   of it for rub %1</source>
        <translation>   其中第 %1 次擦盐</translation>
    </message>
    <message>
        <source>Nothing to weigh.</source>
        <translation>没有要称的。</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>肉</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>盐</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>亚硝酸盐，以亚硝酸钠计</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>硝酸盐，以硝酸钠计</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>限量</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>出处和版本</translation>
    </message>
    <message>
        <source>No limit set was chosen: the dose was not compared with any.</source>
        <translation>没有选择限量：用量未与任何限量比对。</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>配料单</translation>
    </message>
    <message>
        <source>Piece %1: %2 of meat</source>
        <translation>肉块 %1：%2 肉</translation>
    </message>
    <message>
        <source>All pieces together</source>
        <translation>全部肉块合计</translation>
    </message>
    <message>
        <source>Weigh the curing salt on the finest scale, and read its strength off the bag in your hand. Follow local codes and licensed practice.</source>
        <translation>用最精细的秤称腌制盐，并从手中的包装上读取其浓度。遵守当地法规和持证操作要求。</translation>
    </message>
    <message>
        <source>Weighed by</source>
        <translation>称量人</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>复核人</translation>
    </message>
    <message>
        <source>No piece of this batch has a green weight: weigh the meat first.</source>
        <translation>此批次没有任何肉块有鲜重：请先称肉。</translation>
    </message>
    <message>
        <source>This batch keeps no recipe that can be read: choose one first.</source>
        <translation>此批次没有可读取的配方：请先选择一个。</translation>
    </message>
</context>
<context>
    <name>MixTables</name>
    <message>
        <source>nitrite</source>
        <translation>亚硝酸盐</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>硝酸盐</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>亚硝酸盐与硝酸盐合计</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>抗坏血酸盐或异抗坏血酸盐</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>抗坏血酸或异抗坏血酸</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>磷酸盐</translation>
    </message>
    <message>
        <source>going in, on the raw weight</source>
        <translation>添加量，按鲜重</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>成品中</translation>
    </message>
    <message>
        <source>left over, by laboratory</source>
        <translation>残留量，由实验室测定</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>按称量值</translation>
    </message>
    <message>
        <source>as sodium salt</source>
        <translation>以钠盐计</translation>
    </message>
    <message>
        <source>as ion</source>
        <translation>以离子计</translation>
    </message>
    <message>
        <source>not permitted</source>
        <translation>不准使用</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>至多 %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>限量内</translation>
    </message>
    <message>
        <source>above</source>
        <translation>超过限量</translation>
    </message>
    <message>
        <source>below</source>
        <translation>低于限量</translation>
    </message>
    <message>
        <source>used</source>
        <translation>已使用</translation>
    </message>
    <message>
        <source>not computable</source>
        <translation>无法计算</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>配料</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>全部合计</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>称取</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>量杯</translation>
    </message>
    <message>
        <source>Scale, ±</source>
        <translation>秤，±</translation>
    </message>
    <message>
        <source>Of the meat</source>
        <translation>占肉重</translation>
    </message>
    <message>
        <source>Liquids fully taken up</source>
        <translation>液体全部吸收</translation>
    </message>
    <message>
        <source>This recipe</source>
        <translation>此配方</translation>
    </message>
    <message>
        <source>Half taken up</source>
        <translation>吸收一半</translation>
    </message>
    <message>
        <source>Salt, all of it</source>
        <translation>盐，总量</translation>
    </message>
    <message>
        <source>Salt in the water phase</source>
        <translation>水相含盐量</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>糖</translation>
    </message>
    <message>
        <source>Nitrite, as NaNO2</source>
        <translation>亚硝酸盐，以 NaNO2 计</translation>
    </message>
    <message>
        <source>Nitrite, as the ion NO2</source>
        <translation>亚硝酸盐，以 NO2 离子计</translation>
    </message>
    <message>
        <source>Nitrate, as NaNO3</source>
        <translation>硝酸盐，以 NaNO3 计</translation>
    </message>
    <message>
        <source>Nitrate, as the ion NO3</source>
        <translation>硝酸盐，以 NO3 离子计</translation>
    </message>
    <message>
        <source>Ascorbate or erythorbate</source>
        <translation>抗坏血酸盐或异抗坏血酸盐</translation>
    </message>
    <message>
        <source>Ascorbic or erythorbic acid</source>
        <translation>抗坏血酸或异抗坏血酸</translation>
    </message>
    <message>
        <source>Added water</source>
        <translation>添加的水</translation>
    </message>
    <message>
        <source>Alcohol, of the whole</source>
        <translation>酒精，占总量</translation>
    </message>
    <message>
        <source>Strength of the liquids</source>
        <translation>液体的酒精度</translation>
    </message>
    <message>
        <source>%1 vol (%2 US proof, %3 UK)</source>
        <translation>%1 vol（美制 proof %2，英制 %3）</translation>
    </message>
    <message>
        <source>Limit and its source</source>
        <translation>限量及其出处</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>此处</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4</source>
        <translation>%1，%2，%3：%4</translation>
    </message>
    <message>
        <source>%1: a scale that shows %2 would do.</source>
        <translation>%1：分度值 %2 的秤即可。</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Or blend a larger lot first: %1. Mix it evenly, then weigh %2 of it for the smallest piece: ± %3.</source>
        <translation>或者先配制较大一份：%1。混合均匀后，为最小的肉块称取 %2：± %3。</translation>
    </message>
    <message>
        <source>Dry, weighed, all taken up</source>
        <translation>干腌，定量，全部吸收</translation>
    </message>
    <message>
        <source>Buried in salt</source>
        <translation>埋盐腌制</translation>
    </message>
    <message>
        <source>Immersed, by pick-up</source>
        <translation>湿腌，按吸收量</translation>
    </message>
    <message>
        <source>Immersed, at equilibrium</source>
        <translation>湿腌，平衡法</translation>
    </message>
    <message>
        <source>Brine of meat and water</source>
        <translation>盐水，按肉和水合计</translation>
    </message>
    <message>
        <source>Pumped in</source>
        <translation>注射</translation>
    </message>
    <message>
        <source>Marinade</source>
        <translation>腌泡汁</translation>
    </message>
    <message>
        <source>Wash of vinegar or spirit</source>
        <translation>醋或烈酒擦洗</translation>
    </message>
    <message>
        <source>of the meat</source>
        <translation>占肉重</translation>
    </message>
    <message>
        <source>of the added water</source>
        <translation>占添加的水</translation>
    </message>
    <message>
        <source>of meat and water</source>
        <translation>占肉和水</translation>
    </message>
    <message>
        <source>of all water</source>
        <translation>占全部水分</translation>
    </message>
</context>
<context>
    <name>ModelWords</name>
    <message>
        <source>slab (flat)</source>
        <translation>片状（扁平）</translation>
    </message>
    <message>
        <source>cylinder (long and round)</source>
        <translation>柱状（长圆）</translation>
    </message>
    <message>
        <source>round</source>
        <translation>圆形</translation>
    </message>
    <message>
        <source>block (brick)</source>
        <translation>块状（砖形）</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>鲜肉</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>已修整</translation>
    </message>
    <message>
        <source>cured, not rinsed</source>
        <translation>已腌，未冲洗</translation>
    </message>
    <message>
        <source>rinsed and wiped</source>
        <translation>已冲洗擦干</translation>
    </message>
    <message>
        <source>in casing</source>
        <translation>装肠衣</translation>
    </message>
    <message>
        <source>in net or string</source>
        <translation>套网或捆绳</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>已裹涂</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>鲜重</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>修整后重量</translation>
    </message>
    <message>
        <source>weight after the cure</source>
        <translation>腌后重量</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>晾挂重量</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>无皮</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>一面带皮</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>四面带皮</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>已计划</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>腌制中</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>静置中</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>风干中</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>已完成</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>已丢弃</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>与其他肉块合并称重</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>已分切</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>进行中</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>已放弃</translation>
    </message>
    <message>
        <source>dressed</source>
        <translation>已装肠衣网套</translation>
    </message>
    <message>
        <source>dressed again</source>
        <translation>重新装肠衣网套</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>已取样</translation>
    </message>
    <message>
        <source>cut in pieces</source>
        <translation>已分切</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>已合并称重</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>已压制</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>已冷冻</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>已解冻</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>已清洗</translation>
    </message>
    <message>
        <source>hung to dry</source>
        <translation>已晾挂风干</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>已移位</translation>
    </message>
    <message>
        <source>look</source>
        <translation>外观</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>手感</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>气味</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>味道</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>霉</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>所做处理</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>other</source>
        <translation>其他</translation>
    </message>
    <message>
        <source>done</source>
        <translation>做好了</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>还没好</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>丢弃</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>整块</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation>已切开</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>真空包装</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>已用完</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>已赠送</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>已售出</translation>
    </message>
    <message>
        <source>thrown out</source>
        <translation>已扔掉</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>重新晾挂</translation>
    </message>
    <message>
        <source>counted again</source>
        <translation>重新清点</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>上盐</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>清洗</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>浸泡</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>腌泡</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>压制</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>烟熏</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>熟成</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>均盐</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>裹涂</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>冷冻</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>存放</translation>
    </message>
    <message>
        <source>too few weighings</source>
        <translation>称重次数太少</translation>
    </message>
    <message>
        <source>at its target</source>
        <translation>已达目标</translation>
    </message>
    <message>
        <source>target out of reach</source>
        <translation>目标无法达到</translation>
    </message>
    <message>
        <source>not drying</source>
        <translation>没有在变干</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>冰箱</translation>
    </message>
    <message>
        <source>drying cabinet</source>
        <translation>风干柜</translation>
    </message>
    <message>
        <source>room</source>
        <translation>房间</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>室外</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>冷冻柜</translation>
    </message>
    <message>
        <source>face to face, at the thickest point</source>
        <translation>最厚处的面到面距离</translation>
    </message>
    <message>
        <source>diameter, at the thickest point</source>
        <translation>最粗处的直径</translation>
    </message>
    <message>
        <source>the shortest side</source>
        <translation>最短边</translation>
    </message>
</context>
<context>
    <name>PieceWords</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>%1 the loss now, %2 the loss aimed for</extracomment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>%1 or later, perhaps never</source>
        <translation>%1 或更晚，也可能永远不会</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Turn</source>
        <translation>翻面</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>已翻面</translation>
    </message>
    <message>
        <source>Rub again</source>
        <translation>再次擦盐</translation>
    </message>
    <message>
        <source>Rubbed again</source>
        <translation>已再次擦盐</translation>
    </message>
    <message>
        <source>Massage</source>
        <translation>揉搓</translation>
    </message>
    <message>
        <source>Massaged</source>
        <translation>已揉搓</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>称重</translation>
    </message>
    <message>
        <source>Weighing left out</source>
        <translation>未称重</translation>
    </message>
    <message>
        <source>Weigh again, as decided</source>
        <translation>按决定再次称重</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>擦拭</translation>
    </message>
    <message>
        <source>Wiped</source>
        <translation>已擦拭</translation>
    </message>
    <message>
        <source>Change places</source>
        <translation>换位</translation>
    </message>
    <message>
        <source>Places changed</source>
        <translation>已换位</translation>
    </message>
    <message>
        <source>Look at the chamber</source>
        <translation>查看风干室</translation>
    </message>
    <message>
        <source>Chamber looked at</source>
        <translation>已查看风干室</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>开始</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>已开始</translation>
    </message>
    <message>
        <source>End</source>
        <translation>结束</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>已结束</translation>
    </message>
    <message>
        <source>Judge whether it is done</source>
        <translation>评定是否做好</translation>
    </message>
    <message>
        <source>Judging left out</source>
        <translation>未评定</translation>
    </message>
    <message>
        <source>Check the instrument</source>
        <translation>校验仪器</translation>
    </message>
    <message>
        <source>Instrument check left out</source>
        <translation>未校验仪器</translation>
    </message>
    <message>
        <source>Check the sensor</source>
        <translation>校验传感器</translation>
    </message>
    <message>
        <source>Sensor checked</source>
        <translation>已校验传感器</translation>
    </message>
    <message>
        <source>Eat or sell first</source>
        <translation>优先食用或出售</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>已查看</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>通风</translation>
    </message>
    <message>
        <source>Aired</source>
        <translation>已通风</translation>
    </message>
    <message>
        <source>%1: done</source>
        <translation>%1：已完成</translation>
    </message>
    <message>
        <source>within the time above</source>
        <translation>在上面的时间之内</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>固定</translation>
    </message>
    <message>
        <source>by weight</source>
        <translation>按重量</translation>
    </message>
    <message>
        <source>by thickness</source>
        <translation>按厚度</translation>
    </message>
    <message>
        <source>until the date</source>
        <translation>到该日期为止</translation>
    </message>
    <message>
        <source>your own pieces</source>
        <translation>您自己的肉块</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>通常</translation>
    </message>
    <message>
        <source>drying model</source>
        <translation>风干模型</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>They hung at this time of year.</source>
        <translation>它们也是在这个季节晾挂的。</translation>
    </message>
    <message>
        <source>They lost %1 a week on the whole.</source>
        <translation>总体上每周失重 %1。</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n 周</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n 天</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n week(s)</source>
        <extracomment>%1 a smaller number</extracomment>
        <translation>
            <numerusform>%1 至 %n 周</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 至 %n 天</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done in this chamber.</source>
        <translation>
            <numerusform>您最近的 %n 块在此风干室从晾挂到做好用了 %1。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your last %n took %1 from hanging to done.</source>
        <translation>
            <numerusform>您最近的 %n 块从晾挂到做好用了 %1。</numerusform>
        </translation>
    </message>
    <message>
        <source>It was too soft: a loss of %1 is worth a try.</source>
        <translation>太软：可试试失重率 %1。</translation>
    </message>
    <message>
        <source>It was too dry: a loss of %1 is worth a try.</source>
        <translation>太干：可试试失重率 %1。</translation>
    </message>
    <message>
        <source>It was too salty at %1 in the finished piece.</source>
        <translation>太咸，成品含盐 %1。</translation>
    </message>
    <message>
        <source>It lacked salt at %1 in the finished piece.</source>
        <translation>盐不够，成品含盐 %1。</translation>
    </message>
    <message>
        <source>%1 of the raw weight instead of %2 is worth a try.</source>
        <translation>可试试鲜重的 %1，代替 %2。</translation>
    </message>
    <message>
        <source>You wrote about %1: “%2”.</source>
        <extracomment>%1 the code of a batch, %2 what the person wrote about it</extracomment>
        <translation>您对 %1 写道：“%2”。</translation>
    </message>
    <message>
        <source>%1 was too salty: salt %2 to %3.</source>
        <translation>%1 太咸：盐由 %2 改为 %3。</translation>
    </message>
    <message>
        <source>%1 lacked salt: salt %2 to %3.</source>
        <translation>%1 盐不够：盐由 %2 改为 %3。</translation>
    </message>
    <message>
        <source>%1 was too soft: loss aimed for is now %2.</source>
        <translation>%1 太软：目标失重率现为 %2。</translation>
    </message>
    <message>
        <source>%1 was too dry: loss aimed for is now %2.</source>
        <translation>%1 太干：目标失重率现为 %2。</translation>
    </message>
    <message>
        <source>much too little salt</source>
        <translation>盐太少</translation>
    </message>
    <message>
        <source>a little short of salt</source>
        <translation>盐略少</translation>
    </message>
    <message>
        <source>a little too salty</source>
        <translation>略咸</translation>
    </message>
    <message>
        <source>much too salty</source>
        <translation>太咸</translation>
    </message>
    <message>
        <source>the salt was right</source>
        <translation>咸淡正好</translation>
    </message>
    <message>
        <source>much too soft</source>
        <translation>太软</translation>
    </message>
    <message>
        <source>a little too soft</source>
        <translation>略软</translation>
    </message>
    <message>
        <source>a little too dry</source>
        <translation>略干</translation>
    </message>
    <message>
        <source>much too dry</source>
        <translation>太干</translation>
    </message>
    <message>
        <source>the texture was right</source>
        <translation>质地正好</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>“%1”</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>Record of batch %1</source>
        <translation>批次 %1 的记录</translation>
    </message>
    <message>
        <source>Mix sheet of batch %1</source>
        <translation>批次 %1 的配料单</translation>
    </message>
    <message>
        <source>Tags of batch %1</source>
        <translation>批次 %1 的挂签</translation>
    </message>
    <message>
        <source>Small tags of batch %1</source>
        <translation>批次 %1 的小挂签</translation>
    </message>
    <message>
        <source>Trace of batch %1</source>
        <translation>批次 %1 的追溯</translation>
    </message>
    <message>
        <source>Mass balance of batch %1</source>
        <translation>批次 %1 的物料平衡</translation>
    </message>
    <message>
        <source>Calibration sheet, %1</source>
        <translation>仪器校验单，%1</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>Batch record</source>
        <translation>批次记录</translation>
    </message>
    <message>
        <source>Trace: one step back, one step forward</source>
        <translation>追溯：向上一步，向下一步</translation>
    </message>
    <message>
        <source>Mass balance</source>
        <translation>物料平衡</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1，其后 %2</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>阶段</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>计划</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>开始</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>结束</translation>
    </message>
    <message>
        <source>Why it ended</source>
        <translation>结束原因</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>Temperature band</source>
        <translation>温度范围</translation>
    </message>
    <message>
        <source>Humidity band</source>
        <translation>湿度范围</translation>
    </message>
    <message>
        <source>No stages were planned.</source>
        <translation>没有计划任何阶段。</translation>
    </message>
    <message>
        <source>Stages</source>
        <translation>阶段</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>传感器</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>最低</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>平均</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>最高</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>最干</translation>
    </message>
    <message>
        <source>Mean RH</source>
        <translation>平均 RH</translation>
    </message>
    <message>
        <source>Dampest</source>
        <translation>最湿</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>超出范围</translation>
    </message>
    <message>
        <source>no readings %1</source>
        <translation>无读数 %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>从未</translation>
    </message>
    <message>
        <source>No readings were recorded while this batch was in a chamber.</source>
        <translation>此批次在风干室期间没有读数记录。</translation>
    </message>
    <message>
        <source>Temperature and humidity</source>
        <translation>温度和湿度</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>称重时间</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>秤上重量</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>净重</translation>
    </message>
    <message>
        <source>What is weighed</source>
        <translation>称的是什么</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>录入</translation>
    </message>
    <message>
        <source>Note, correction and why</source>
        <translation>备注、更正及原因</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>表面潮湿</translation>
    </message>
    <message>
        <source>corrects %1: %2</source>
        <translation>更正 %1：%2</translation>
    </message>
    <message>
        <source>corrected by a later entry</source>
        <translation>已由后来的条目更正</translation>
    </message>
    <message>
        <source>taken back by %1: %2</source>
        <translation>由 %1 撤回：%2</translation>
    </message>
    <message>
        <source>Never weighed.</source>
        <translation>从未称重。</translation>
    </message>
    <message>
        <source>Weighings with corrections</source>
        <translation>称重及更正</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>肉块 %1</translation>
    </message>
    <message>
        <source>Struck figures were corrected or taken back and no longer count; they stay readable.</source>
        <translation>划去的数字已被更正或撤回，不再计入；但仍可读。</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>发生了什么</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>之前净重</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>之后净重</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>No events were recorded.</source>
        <translation>没有事件记录。</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>事件</translation>
    </message>
    <message>
        <source>From</source>
        <translation>自</translation>
    </message>
    <message>
        <source>To</source>
        <translation>至</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>偏差</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>最差值</translation>
    </message>
    <message>
        <source>Action taken, initials</source>
        <translation>采取的措施，签名缩写</translation>
    </message>
    <message>
        <source>No excursion of an hour or longer is in the readings.</source>
        <translation>读数中没有一小时或更长的超限。</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>警告</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>确认人</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>No caution was accepted.</source>
        <translation>没有确认过任何警告。</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>类型</translation>
    </message>
    <message>
        <source>What was seen or done</source>
        <translation>所见或所做</translation>
    </message>
    <message>
        <source> (photo: %1)</source>
        <translation> （照片：%1）</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>No notes were recorded.</source>
        <translation>没有备注记录。</translation>
    </message>
    <message>
        <source>Deviations and corrective action</source>
        <translation>偏差与纠正措施</translation>
    </message>
    <message>
        <source>Air out of its band</source>
        <translation>空气超出范围</translation>
    </message>
    <message>
        <source>Cautions accepted</source>
        <translation>已确认的警告</translation>
    </message>
    <message>
        <source>Notes and actions</source>
        <translation>备注与措施</translation>
    </message>
    <message>
        <source>Further deviation · limit · action taken · date and time · initials</source>
        <translation>其他偏差 · 限值 · 采取的措施 · 日期和时间 · 签名缩写</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>仪器</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>校验时间</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>对照物</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>应为</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>测得</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>措施</translation>
    </message>
    <message>
        <source>By</source>
        <translation>执行人</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>从未校验</translation>
    </message>
    <message>
        <source>No instruments are registered.</source>
        <translation>尚未登记任何仪器。</translation>
    </message>
    <message>
        <source>Instruments and calibration</source>
        <translation>仪器与校验</translation>
    </message>
    <message>
        <source>Laboratory measurements</source>
        <translation>实验室测量</translation>
    </message>
    <message>
        <source>Water activity and pH are measured, not computed. Enter what a laboratory or an instrument found, with the instrument, its calibration and the date.</source>
        <translation>水分活度和 pH 要靠测量，不靠计算。请填写实验室或仪器的测得值，并注明仪器、其校验和日期。</translation>
    </message>
    <message>
        <source>Sample of piece · water activity · pH · instrument · date · initials</source>
        <translation>取样肉块 · 水分活度 · pH · 仪器 · 日期 · 签名缩写</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>决定</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>签名人</translation>
    </message>
    <message>
        <source>No decision has been signed.</source>
        <translation>没有已签名的决定。</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>决定</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>Batch %1 · %2 · started %3</source>
        <translation>批次 %1 · %2 · 开始于 %3</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>批次编号</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>产品</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>动物种类</translation>
    </message>
    <message>
        <source>Supplier of the meat</source>
        <translation>肉的供应商</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>供应商批号</translation>
    </message>
    <message>
        <source>Frozen before curing</source>
        <translation>腌制前曾冷冻</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>购入重量</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>修整去除</translation>
    </message>
    <message>
        <source>Green weight of all pieces</source>
        <translation>全部肉块鲜重</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>开始日期</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>Identification</source>
        <translation>标识</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>部位</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>肉皮</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>Green weight</source>
        <translation>鲜重</translation>
    </message>
    <message>
        <source>Hung weight</source>
        <translation>晾挂重量</translation>
    </message>
    <message>
        <source>Last weight</source>
        <translation>最近重量</translation>
    </message>
    <message>
        <source>Loss of green</source>
        <translation>相对鲜重失重</translation>
    </message>
    <message>
        <source>Loss of hung</source>
        <translation>相对晾挂失重</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>目标</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2的 %1</translation>
    </message>
    <message>
        <source> (from %1)</source>
        <translation> （来自 %1）</translation>
    </message>
    <message>
        <source>No pieces.</source>
        <translation>没有肉块。</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Weights are net. A loss is left out where something was cut off or put on in between: see the events.</source>
        <translation>重量均为净重。其间有切取或添加的，不列失重：见事件。</translation>
    </message>
    <message>
        <source>Ingredient</source>
        <translation>配料</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>批号</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>供应商</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>购入</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>已称</translation>
    </message>
    <message>
        <source>For</source>
        <translation>用于</translation>
    </message>
    <message>
        <source>all</source>
        <translation>全部</translation>
    </message>
    <message>
        <source>No ingredient lots were recorded.</source>
        <translation>没有配料批号记录。</translation>
    </message>
    <message>
        <source>Inputs with lots</source>
        <translation>投入物及批号</translation>
    </message>
    <message>
        <source>Computed doses</source>
        <translation>计算用量</translation>
    </message>
    <message>
        <source>Not computed: no piece has a green weight.</source>
        <translation>未计算：没有肉块有鲜重。</translation>
    </message>
    <message>
        <source>Not computed: the batch keeps no recipe that can be read.</source>
        <translation>未计算：此批次没有可读取的配方。</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>On green meat</source>
        <translation>按鲜重</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>盐</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>糖</translation>
    </message>
    <message>
        <source>Nitrite, as sodium nitrite</source>
        <translation>亚硝酸盐，以亚硝酸钠计</translation>
    </message>
    <message>
        <source>Nitrate, as sodium nitrate</source>
        <translation>硝酸盐，以硝酸钠计</translation>
    </message>
    <message>
        <source>Line of the recipe</source>
        <translation>配方行</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>用量</translation>
    </message>
    <message>
        <source>Nitrite strength</source>
        <translation>亚硝酸盐浓度</translation>
    </message>
    <message>
        <source>Nitrate strength</source>
        <translation>硝酸盐浓度</translation>
    </message>
    <message>
        <source>Strength from</source>
        <translation>浓度来源</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>标签</translation>
    </message>
    <message>
        <source>the catalogue</source>
        <translation>目录</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>限量</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>允许</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>计算值</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>出处和版本</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>至多 %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>No limit set was chosen for this recipe: the doses were not compared.</source>
        <translation>此配方没有选择限量：用量未作比对。</translation>
    </message>
    <message>
        <source>Compared with the limit set: %1</source>
        <translation>比对所用限量：%1</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>签名</translation>
    </message>
    <message>
        <source>Record made by</source>
        <translation>记录制作人</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>复核人</translation>
    </message>
    <message>
        <source>Released by</source>
        <translation>放行人</translation>
    </message>
    <message>
        <source>Officer, seen</source>
        <translation>官方人员，已阅</translation>
    </message>
    <message>
        <source>Figures are records and computations. Whether a product may be sold or eaten is for local codes, licensed practice and laboratory measurement.</source>
        <translation>数字是记录和计算结果。产品能否出售或食用，由当地法规、持证操作和实验室测量决定。</translation>
    </message>
    <message>
        <source>What</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>Their lot</source>
        <translation>对方批号</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>数量</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>肉：%1</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>向上一步</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>成品包</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>给谁</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>已包装</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>没有剩余</translation>
    </message>
    <message>
        <source>still here</source>
        <translation>仍在此处</translation>
    </message>
    <message>
        <source>Nothing of this batch has been packed.</source>
        <translation>此批次尚未包装任何成品。</translation>
    </message>
    <message>
        <source>One step forward</source>
        <translation>向下一步</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>步骤</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>质量</translation>
    </message>
    <message>
        <source>Of the green weight</source>
        <translation>占鲜重</translation>
    </message>
    <message>
        <source>Green weight of the pieces</source>
        <translation>肉块鲜重</translation>
    </message>
    <message>
        <source>Net weight now, of pieces not discarded</source>
        <translation>现净重，不含已丢弃的肉块</translation>
    </message>
    <message>
        <source>Green weight less net weight now: water, discarded pieces, ends and samples</source>
        <translation>鲜重减现净重：水分、丢弃的肉块、切头和样品</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>已包装</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>已用</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>已赠送</translation>
    </message>
    <message>
        <source>Sold</source>
        <translation>已售出</translation>
    </message>
    <message>
        <source>Hung again</source>
        <translation>重新晾挂</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>损耗</translation>
    </message>
    <message>
        <source>Still in stock</source>
        <translation>仍在库存</translation>
    </message>
    <message>
        <source>Packed, but not accounted for</source>
        <translation>已包装但去向不明</translation>
    </message>
    <message>
        <source>The packs do not balance: %1 cannot be accounted for.</source>
        <translation>成品包账目不平：%1 去向不明。</translation>
    </message>
    <message>
        <source>Bought less trimmed off less green weight: %1.</source>
        <translation>购入减修整去除再减鲜重：%1。</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>已计划</translation>
    </message>
    <message>
        <source>in progress</source>
        <translation>进行中</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>已完成</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>已放弃</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>腌制中</translation>
    </message>
    <message>
        <source>resting</source>
        <translation>静置中</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>风干中</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>已丢弃</translation>
    </message>
    <message>
        <source>weighed with others</source>
        <translation>与其他肉块合并称重</translation>
    </message>
    <message>
        <source>cut into pieces</source>
        <translation>已分切</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>鲜肉</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>已修整</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>已腌</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>已冲洗</translation>
    </message>
    <message>
        <source>cased</source>
        <translation>已装肠衣</translation>
    </message>
    <message>
        <source>netted</source>
        <translation>已套网套</translation>
    </message>
    <message>
        <source>coated</source>
        <translation>已裹涂</translation>
    </message>
    <message>
        <source>casing or net put on</source>
        <translation>装上肠衣或网套</translation>
    </message>
    <message>
        <source>casing or net changed</source>
        <translation>更换肠衣或网套</translation>
    </message>
    <message>
        <source>sampled</source>
        <translation>已取样</translation>
    </message>
    <message>
        <source>weighed as one</source>
        <translation>已合并称重</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>已压制</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>已冷冻</translation>
    </message>
    <message>
        <source>thawed</source>
        <translation>已解冻</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>已清洗</translation>
    </message>
    <message>
        <source>hung</source>
        <translation>已晾挂</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>已移位</translation>
    </message>
    <message>
        <source>salting</source>
        <translation>上盐</translation>
    </message>
    <message>
        <source>washing</source>
        <translation>清洗</translation>
    </message>
    <message>
        <source>soaking</source>
        <translation>浸泡</translation>
    </message>
    <message>
        <source>marinating</source>
        <translation>腌泡</translation>
    </message>
    <message>
        <source>pressing</source>
        <translation>压制</translation>
    </message>
    <message>
        <source>smoking</source>
        <translation>烟熏</translation>
    </message>
    <message>
        <source>ageing</source>
        <translation>熟成</translation>
    </message>
    <message>
        <source>equalising</source>
        <translation>均盐</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>裹涂</translation>
    </message>
    <message>
        <source>freezing</source>
        <translation>冷冻</translation>
    </message>
    <message>
        <source>storing</source>
        <translation>存放</translation>
    </message>
    <message>
        <source>look</source>
        <translation>外观</translation>
    </message>
    <message>
        <source>touch</source>
        <translation>手感</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>气味</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>味道</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>霉</translation>
    </message>
    <message>
        <source>action</source>
        <translation>措施</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>done</source>
        <translation>做好了</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>还没好</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>丢弃</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>整块</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>已切开</translation>
    </message>
    <message>
        <source>vacuum packed</source>
        <translation>真空包装</translation>
    </message>
    <message>
        <source>used</source>
        <translation>已使用</translation>
    </message>
    <message>
        <source>given</source>
        <translation>已赠送</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>已售出</translation>
    </message>
    <message>
        <source>wasted</source>
        <translation>已损耗</translation>
    </message>
    <message>
        <source>hung again</source>
        <translation>重新晾挂</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>已清点</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>秤</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>温度计</translation>
    </message>
    <message>
        <source>hygrometer</source>
        <translation>湿度计</translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation>pH 计</translation>
    </message>
    <message>
        <source>water activity meter</source>
        <translation>水分活度仪</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>仪器</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>鲜重</translation>
    </message>
    <message>
        <source>trimmed weight</source>
        <translation>修整后重量</translation>
    </message>
    <message>
        <source>cured weight</source>
        <translation>腌后重量</translation>
    </message>
    <message>
        <source>hung weight</source>
        <translation>晾挂重量</translation>
    </message>
    <message>
        <source>no skin</source>
        <translation>无皮</translation>
    </message>
    <message>
        <source>skin on one side</source>
        <translation>一面带皮</translation>
    </message>
    <message>
        <source>skin all round</source>
        <translation>四面带皮</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>太冷</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>太热</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>太干</translation>
    </message>
    <message>
        <source>too damp</source>
        <translation>太湿</translation>
    </message>
    <message>
        <source>nitrite</source>
        <translation>亚硝酸盐</translation>
    </message>
    <message>
        <source>nitrate</source>
        <translation>硝酸盐</translation>
    </message>
    <message>
        <source>nitrite and nitrate together</source>
        <translation>亚硝酸盐与硝酸盐合计</translation>
    </message>
    <message>
        <source>ascorbate or erythorbate</source>
        <translation>抗坏血酸盐或异抗坏血酸盐</translation>
    </message>
    <message>
        <source>ascorbic or erythorbic acid</source>
        <translation>抗坏血酸或异抗坏血酸</translation>
    </message>
    <message>
        <source>phosphate</source>
        <translation>磷酸盐</translation>
    </message>
    <message>
        <source>ingoing</source>
        <translation>添加量</translation>
    </message>
    <message>
        <source>in the finished product</source>
        <translation>成品中</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>残留量</translation>
    </message>
    <message>
        <source>within</source>
        <translation>限量内</translation>
    </message>
    <message>
        <source>ABOVE</source>
        <translation>超过限量</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>低于最低要求</translation>
    </message>
    <message>
        <source>NOT PERMITTED, used</source>
        <translation>不准使用，但已使用</translation>
    </message>
    <message>
        <source>laboratory only</source>
        <translation>只能由实验室测定</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>是</translation>
    </message>
    <message>
        <source>no</source>
        <translation>否</translation>
    </message>
    <message>
        <source>Caution, as it was shown</source>
        <translation>警告（按当时显示）</translation>
    </message>
</context>
<context>
    <name>ReviewWords</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>至多 %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>至少 %1</translation>
    </message>
    <message>
        <source>lies below it</source>
        <translation>低于它</translation>
    </message>
    <message>
        <source>lies above it</source>
        <translation>高于它</translation>
    </message>
    <message>
        <source>lies on both sides of it</source>
        <translation>跨越它</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>start weight</source>
        <translation>起始重量</translation>
    </message>
    <message>
        <source>salt put on</source>
        <translation>上盐量</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>fat share</source>
        <translation>脂肪比例</translation>
    </message>
    <message>
        <source>humidity log</source>
        <translation>湿度记录</translation>
    </message>
    <message>
        <source>temperature log</source>
        <translation>温度记录</translation>
    </message>
    <message>
        <source>weighings while drying</source>
        <translation>风干期间的称重</translation>
    </message>
    <message>
        <source>measured water activity</source>
        <translation>测得的水分活度</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>重量</translation>
    </message>
    <message>
        <source>lost of the %1</source>
        <translation>相对%1的失重</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>目标 %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>每天 %1</translation>
    </message>
    <message>
        <source>pace in the first week</source>
        <translation>第一周的速度</translation>
    </message>
    <message>
        <source>pace in the last two weeks</source>
        <translation>最近两周的速度</translation>
    </message>
    <message>
        <source>time since hung</source>
        <translation>晾挂后的时间</translation>
    </message>
    <message>
        <source>Estimated, 8 in 10 fall in the range</source>
        <translation>估计，十次有八次落在范围内</translation>
    </message>
    <message>
        <source>water of the piece</source>
        <translation>肉块含水</translation>
    </message>
    <message>
        <source>salt of the piece</source>
        <translation>肉块含盐</translation>
    </message>
    <message>
        <source>salt in its water</source>
        <translation>水相含盐量</translation>
    </message>
    <message>
        <source>water activity</source>
        <translation>水分活度</translation>
    </message>
    <message>
        <source>an estimate; only a laboratory measures it</source>
        <translation>这是估计；只有实验室能测出</translation>
    </message>
    <message>
        <source>Beside cited figures</source>
        <translation>与引用数值对照</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Seen, felt, smelt</source>
        <translation>所见、所触、所闻</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>would add to the picture</source>
        <translation>有助于了解全貌</translation>
    </message>
    <message>
        <source>mean %1, %2 to %3</source>
        <translation>平均 %1，%2 至 %3</translation>
    </message>
    <message>
        <source>no band to hold it against</source>
        <translation>没有可对照的范围</translation>
    </message>
    <message>
        <source>never out of its band in the log</source>
        <translation>记录中从未超出范围</translation>
    </message>
    <message>
        <source>%1: air</source>
        <translation>%1：空气</translation>
    </message>
    <message>
        <source>no log</source>
        <translation>无记录</translation>
    </message>
    <message>
        <source>no climate log covers this piece&apos;s time there</source>
        <translation>没有温湿度记录覆盖这块肉在那里的时间</translation>
    </message>
    <message>
        <source>%1: temperature</source>
        <translation>%1：温度</translation>
    </message>
    <message>
        <source>%1 too cold</source>
        <translation>太冷 %1</translation>
    </message>
    <message>
        <source>%1 too warm</source>
        <translation>太热 %1</translation>
    </message>
    <message>
        <source>%1: humidity</source>
        <translation>%1：湿度</translation>
    </message>
    <message>
        <source>%1 too dry</source>
        <translation>太干 %1</translation>
    </message>
    <message>
        <source>%1 too damp</source>
        <translation>太湿 %1</translation>
    </message>
    <message>
        <source>%1: not logged</source>
        <translation>%1：未记录</translation>
    </message>
    <message>
        <source>of this time nothing is known</source>
        <translation>这段时间情况不明</translation>
    </message>
    <message>
        <source>Stages and their air</source>
        <translation>各阶段及其空气</translation>
    </message>
</context>
<context>
    <name>SaveCalendar</name>
    <message>
        <source>Save the calendar</source>
        <translation>保存日历</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>日历 (*.ics)</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>%1 无法写入：%2。请换一个位置。</translation>
    </message>
    <message>
        <source>Calendar kept in %1.</source>
        <translation>日历已保存在 %1。</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>第 %1 页，共 %2 页</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>打印于 %1</translation>
    </message>
    <message>
        <source>As</source>
        <translation>身份</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>姓名</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>签名</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>日期和时间</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>库存</translation>
    </message>
    <message>
        <source>&amp;Pack a finished piece…</source>
        <translation>包装成品肉块(&amp;P)…</translation>
    </message>
    <message>
        <source>Nothing is packed yet</source>
        <translation>尚未包装</translation>
    </message>
    <message>
        <source>When a piece is signed as done, pack it here: whole, cut, under vacuum or frozen. The list then shows what to eat first, what is left, and where everything went.</source>
        <translation>肉块签名确认做好后，在这里包装：整块、切开、真空或冷冻。列表随即显示先吃哪些、还剩多少、去了哪里。</translation>
    </message>
    <message>
        <source>Pack a finished piece</source>
        <translation>包装成品肉块</translation>
    </message>
    <message>
        <source>In eating order: open packs first, then the nearest day.</source>
        <translation>按食用顺序：先是已开封的，再按日期从近到远。</translation>
    </message>
    <message>
        <source>Show packs that are &amp;gone</source>
        <translation>显示已用完的成品包(&amp;G)</translation>
    </message>
    <message>
        <source>Show packs that are gone</source>
        <translation>显示已用完的成品包</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>成品包</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>更改(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Take from it…</source>
        <translation>取出(&amp;T)…</translation>
    </message>
    <message>
        <source>What was taken from the pack</source>
        <translation>从该成品包取出的记录</translation>
    </message>
    <message>
        <source>Eat</source>
        <translation>食用</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>成品包</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>产品</translation>
    </message>
    <message>
        <source>How</source>
        <translation>方式</translation>
    </message>
    <message>
        <source>%1, open since %2</source>
        <translation>%1，%2 开封</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>剩余</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>保存至</translation>
    </message>
    <message>
        <source>▲ %1, past</source>
        <translation>▲ %1，已过</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>去向</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>数量</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>给谁</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>From piece %1 of batch %2.</source>
        <translation>来自批次 %2 的肉块 %1。</translation>
    </message>
    <message>
        <source>Finished packs: what to eat first and where it went</source>
        <translation>成品包：先吃哪些，去了哪里</translation>
    </message>
    <message>
        <source>Its yield is not known: the raw or the finished weight was not taken.</source>
        <translation>出品率未知：没有称鲜重或成品重。</translation>
    </message>
    <message>
        <source>Yield: %1 of %2 raw, %3 (lost %4); packed %5.</source>
        <translation>出品率：鲜重 %2 得 %1，%3（失重 %4）；已包装 %5。</translation>
    </message>
    <message>
        <source>At that loss the meat cost %1 a finished kilogram.</source>
        <translation>按此失重，每千克成品的肉成本为 %1。</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No day is set to keep it until.</source>
        <translation>未设保存期限。</translation>
    </message>
    <message>
        <source>Keep until %1 by a rule: %2.</source>
        <translation>保存至 %1，依据规则：%2。</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day.</source>
        <translation>保存至 %1：自定日期。</translation>
    </message>
    <message>
        <source>Keep until %1: somebody&apos;s own day, because: %2</source>
        <translation>保存至 %1：自定日期，原因：%2</translation>
    </message>
</context>
<context>
    <name>TagText</name>
    <message>
        <source>%1 of %2</source>
        <translation>%2的 %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>批次 %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>起始</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>目标</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>晾挂</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>挂签</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>今天</translation>
    </message>
    <message>
        <source>&amp;Weigh-in round</source>
        <translation>巡回称重(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Calendar</source>
        <translation>日历(&amp;C)</translation>
    </message>
    <message>
        <source>No work yet</source>
        <translation>尚无任务</translation>
    </message>
    <message>
        <source>Once a batch is planned, this page lists each day&apos;s work across all batches: turning, rubbing, weighing, looking at the chambers, judging what is ready. One key ticks a line off; what was missed stays at the top.</source>
        <translation>批次有了计划之后，本页列出所有批次每天的任务：翻面、擦盐、称重、查看风干室、评定做好的。按一个键即可勾掉一行；漏做的留在最上面。</translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation>计划一个批次</translation>
    </message>
    <message>
        <source>&amp;Leave out this time</source>
        <translation>本次略过(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>完成(&amp;D)</translation>
    </message>
    <message>
        <source>Nothing is left for today.</source>
        <translation>今天没有剩余任务。</translation>
    </message>
    <message>
        <source>&amp;Do it now</source>
        <translation>现在去做(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>打开(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>撤回(&amp;T)</translation>
    </message>
    <message>
        <source>Space or Enter: %1 Delete: leave it out this time.</source>
        <extracomment>%1 what the key does</extracomment>
        <translation>空格或 Enter：%1 Delete：本次略过。</translation>
    </message>
    <message>
        <source>Space: %1</source>
        <translation>空格：%1</translation>
    </message>
    <message>
        <source>The day&apos;s work across all batches</source>
        <translation>所有批次的当日任务</translation>
    </message>
    <message>
        <source>Work of the day</source>
        <translation>当日任务</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>说明</translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>% RH</source>
        <translation>% RH</translation>
    </message>
    <message>
        <source>% vol</source>
        <translation>% vol</translation>
    </message>
    <message>
        <source>ppm</source>
        <translation>ppm</translation>
    </message>
    <message>
        <source>min</source>
        <translation>分钟</translation>
    </message>
    <message>
        <source>h</source>
        <translation>小时</translation>
    </message>
    <message>
        <source>d</source>
        <translation>天</translation>
    </message>
    <message>
        <source>days</source>
        <translation>天</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>周</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>week</source>
        <translation>周</translation>
    </message>
    <message>
        <source>day</source>
        <translation>天</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>小时</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>小时</translation>
    </message>
</context>
<context>
    <name>Upset</name>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>Upset in %1: %2 to %3, highest air temperature %4.</source>
        <translation>%1 异常：%2 至 %3，最高空气温度 %4。</translation>
    </message>
    <message>
        <source>Without a reading: %1.</source>
        <translation>无读数：%1。</translation>
    </message>
    <message>
        <source>%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.</source>
        <translation>%1 %2：阶段 %3，晾挂 %4，失重 %5，含盐至多 %6，亚硝酸盐添加 %7。</translation>
    </message>
    <message>
        <source>%1 %2 (water activity %3)</source>
        <translation>%1 %2（水分活度 %3）</translation>
    </message>
    <message>
        <source>  Air in growth range: %1.</source>
        <translation>  空气处于生长范围：%1。</translation>
    </message>
    <message>
        <source>A record of the air, not of the meat&apos;s core, and no judgement.</source>
        <translation>这是空气的记录，不是肉中心的记录，也不是判断。</translation>
    </message>
</context>
<context>
    <name>WarmWords</name>
    <message>
        <source>No time can be given: see below.</source>
        <translation>无法给出时间：见下文。</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>已经达到。</translation>
    </message>
    <message>
        <source>About %1 in the warm air; 8 in 10 pieces take %2 to %3.</source>
        <translation>在暖风中约 %1；十块有八块需要 %2 至 %3。</translation>
    </message>
    <message>
        <source>at most %1 tenfold steps in a laboratory medium, without lag</source>
        <translation>在实验室培养基中、无迟滞期时，至多 %1 次十倍增长</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Warm finish, %1: air at %2 and %3, from %4 to %5 lost.</source>
        <translation>暖风收干，%1：空气 %2、%3，失重由 %4 至 %5。</translation>
    </message>
    <message>
        <source>In the growth range of %1: %2 (%3)</source>
        <translation>处于 %1 的生长范围：%2（%3）</translation>
    </message>
</context>
<context>
    <name>WhatIfWords</name>
    <message>
        <source>reached</source>
        <translation>已达到</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>未达到</translation>
    </message>
    <message>
        <source>by today</source>
        <translation>不晚于今天</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1（%2 至 %3）</translation>
    </message>
    <message>
        <source>not reachable: more likely never than ever</source>
        <translation>达不到：达不到的可能大于达到</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 a temperature, %2 a humidity: air</extracomment>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>Air ahead</source>
        <translation>今后的空气</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>目标</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>1 chance in 10 by</source>
        <translation>一成可能的日期</translation>
    </message>
    <message>
        <source>Even odds by</source>
        <translation>五成可能的日期</translation>
    </message>
    <message>
        <source>9 chances in 10 by</source>
        <translation>九成可能的日期</translation>
    </message>
    <message>
        <source>Levels off at</source>
        <translation>趋平于</translation>
    </message>
    <message>
        <source>No humidity at %1 draws water as strongly as %2 does.</source>
        <translation>在 %1 下，没有哪个湿度的吸水力与 %2 相当。</translation>
    </message>
    <message>
        <source>Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How far the piece can dry follows from humidity almost alone.</source>
        <translation>干燥力相等：%1、%2 的吸水力与 %3、%4 相同。肉块能干到什么程度，几乎只取决于湿度。</translation>
    </message>
    <message>
        <source>%1 lies in the cited growth range of %2 (%3 to %4), which %5 does not. %6</source>
        <translation>%1 处于所引 %2 的生长范围（%3 至 %4），而 %5 不在其中。%6</translation>
    </message>
</context>
<context>
    <name>WorkList</name>
    <message>
        <source>Work of the day</source>
        <translation>当日任务</translation>
    </message>
</context>
<context>
    <name>app::window::Session</name>
    <message>
        <source>Open a book</source>
        <translation>打开记录簿</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Saltloft 记录簿 (*.saltloft);;所有文件 (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>新建记录簿</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Saltloft 记录簿 (*.saltloft)</translation>
    </message>
    <message>
        <source>Back up a copy</source>
        <translation>备份副本</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>The copy was written and read back: %1, %2, %3.</source>
        <translation>副本已写入并读回核对：%1，%2，%3。</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n 个批次</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n 块肉</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weighing(s)</source>
        <translation>
            <numerusform>%n 次称重</numerusform>
        </translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>恢复备份</translation>
    </message>
    <message>
        <source>The backup is in its place and open.</source>
        <translation>备份已就位并打开。</translation>
    </message>
    <message>
        <source>The backup is in its place and open. The book as it was before is kept as %1.</source>
        <translation>备份已就位并打开。原来的记录簿保存为 %1。</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartPainter</name>
    <message>
        <source>now</source>
        <translation>现在</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartTable</name>
    <message>
        <source>The chart as a table</source>
        <translation>图表的表格形式</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1，表格形式</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>曲线</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>读数</translation>
    </message>
</context>
<context>
    <name>ui::charts::ChartView</name>
    <message>
        <source>Move over a point, or use Left and Right, to read it.</source>
        <translation>移到某点上，或用左、右方向键，即可读数。</translation>
    </message>
    <message>
        <source>Chart</source>
        <translation>图表</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>复制表格</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>显示为表格</translation>
    </message>
    <message>
        <source>Copied: paste it into a spreadsheet or a text.</source>
        <translation>已复制：可粘贴到电子表格或文本中。</translation>
    </message>
    <message>
        <source>Enter chooses a row that was weighed; Ctrl+C copies.</source>
        <translation>按 Enter 选择称过重的一行；按 Ctrl+C 复制。</translation>
    </message>
    <message>
        <source>As a drawing</source>
        <translation>显示为图形</translation>
    </message>
    <message>
        <source>%1, as a table</source>
        <translation>%1，表格形式</translation>
    </message>
    <message>
        <source>Copy the table: %1</source>
        <translation>复制表格：%1</translation>
    </message>
</context>
<context>
    <name>ui::edits::DayField</name>
    <message>
        <source>today</source>
        <translation>今天</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>明天</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>昨天</translation>
    </message>
    <message>
        <source>day, e.g. %1</source>
        <translation>日期，例如 %1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Pick from a calendar (Alt+Down)</source>
        <translation>从日历选择 (Alt+Down)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>Pick a day</source>
        <translation>选择日期</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>日历</translation>
    </message>
</context>
<context>
    <name>ui::models::WorkModel</name>
    <message>
        <source>Overdue</source>
        <translation>逾期</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>今天</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>即将到来</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation>今天已完成</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>a heading of the day sheet and how many lines it has</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>任务</translation>
    </message>
    <message>
        <source>Batch and pieces</source>
        <translation>批次和肉块</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>地点</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchDialog</name>
    <message>
        <source>Change batch %1</source>
        <translation>更改批次 %1</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>产品</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>动物种类</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>供应商</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>供应商批号</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>开始日期</translation>
    </message>
    <message>
        <source>Bought weight</source>
        <translation>购入重量</translation>
    </message>
    <message>
        <source>Trimmed off</source>
        <translation>修整去除</translation>
    </message>
    <message>
        <source>Price per kilogram</source>
        <translation>每千克价格</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>The meat was frozen before</source>
        <translation>肉曾经冷冻</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>编号(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>产品(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>动物种类(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Supplier</source>
        <translation>供应商(&amp;S)</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>供应商批号(&amp;L)</translation>
    </message>
    <message>
        <source>S&amp;tarted</source>
        <translation>开始日期(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Bought weight</source>
        <translation>购入重量(&amp;B)</translation>
    </message>
    <message>
        <source>Trimmed &amp;off</source>
        <translation>修整去除(&amp;O)</translation>
    </message>
    <message>
        <source>P&amp;rice per kilogram</source>
        <translation>每千克价格(&amp;R)</translation>
    </message>
    <message>
        <source>Stat&amp;e</source>
        <translation>状态(&amp;E)</translation>
    </message>
</context>
<context>
    <name>ui::pages::BatchesPage</name>
    <message>
        <source>Batches and pieces</source>
        <translation>批次和肉块</translation>
    </message>
    <message>
        <source>&amp;New batch…</source>
        <translation>新建批次(&amp;N)…</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <translation>尚无批次</translation>
    </message>
    <message>
        <source>A batch is meat cured together from one recipe. Weigh it, let the mix sheet compute the cure, and give each piece a code. From then on every weighing finds its place by itself.</source>
        <translation>一个批次是按同一配方一起腌制的肉。称重，由配料单算出腌料，并给每块肉一个编号。此后每次称重都会自动归位。</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <translation>开始第一个批次</translation>
    </message>
    <message>
        <source>Find a batch</source>
        <translation>查找批次</translation>
    </message>
    <message>
        <source>Find by code, name, product or supplier</source>
        <translation>按编号、名称、产品或供应商查找</translation>
    </message>
    <message>
        <source>Show &amp;finished batches too</source>
        <translation>同时显示已完成的批次(&amp;F)</translation>
    </message>
    <message>
        <source>Show finished batches too</source>
        <translation>同时显示已完成的批次</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>批次中的肉块</translation>
    </message>
    <message>
        <source>&amp;Add a piece…</source>
        <translation>添加肉块(&amp;A)…</translation>
    </message>
    <message>
        <source>&amp;Change the batch…</source>
        <translation>更改批次(&amp;C)…</translation>
    </message>
    <message>
        <source>Batches above pieces</source>
        <translation>上为批次，下为肉块</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>产品</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>开始日期</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>风干中</translation>
    </message>
    <message>
        <source>Last weighed</source>
        <translation>最近称重</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>Net now</source>
        <translation>现净重</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>At target</source>
        <translation>达到目标</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>started %1</source>
        <translation>开始于 %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>来自 %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>批号 %1</translation>
    </message>
    <message>
        <source>bought %1</source>
        <translation>购入 %1</translation>
    </message>
    <message>
        <source>All batches and their pieces</source>
        <translation>所有批次及其肉块</translation>
    </message>
    <message>
        <source>&amp;More</source>
        <translation>更多(&amp;M)</translation>
    </message>
    <message>
        <source>More about the batch</source>
        <translation>批次的更多操作</translation>
    </message>
    <message>
        <source>&amp;Curves on one chart</source>
        <translation>曲线同图显示(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;How it came out…</source>
        <translation>成品如何(&amp;H)…</translation>
    </message>
    <message>
        <source>How it came out: %1</source>
        <translation>成品如何：%1</translation>
    </message>
    <message>
        <source>Salt, texture, and what to change next time</source>
        <translation>咸淡、质地，以及下次要改什么</translation>
    </message>
    <message>
        <source>Once a piece of it is signed as done.</source>
        <translation>须先有一块肉签名确认做好。</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberDialog</name>
    <message>
        <source>Change a chamber</source>
        <translation>更改风干室</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>添加风干室</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>类型</translation>
    </message>
    <message>
        <source>Lowest temperature wanted</source>
        <translation>期望最低温度</translation>
    </message>
    <message>
        <source>Highest temperature wanted</source>
        <translation>期望最高温度</translation>
    </message>
    <message>
        <source>Lowest humidity wanted</source>
        <translation>期望最低湿度</translation>
    </message>
    <message>
        <source>Highest humidity wanted</source>
        <translation>期望最高湿度</translation>
    </message>
    <message>
        <source>Water it can carry out a day</source>
        <translation>每天可排出的水分</translation>
    </message>
    <message>
        <source>Places to hang</source>
        <translation>挂位数</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>类型(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Temperature from</source>
        <translation>温度从(&amp;T)</translation>
    </message>
    <message>
        <source>to</source>
        <translation>至</translation>
    </message>
    <message>
        <source>&amp;Humidity from</source>
        <translation>湿度从(&amp;H)</translation>
    </message>
    <message>
        <source>Water it can carry &amp;out a day</source>
        <translation>每天可排出的水分(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Places to hang</source>
        <translation>挂位数(&amp;P)</translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation>备注(&amp;O)</translation>
    </message>
    <message>
        <source>Give the chamber a name, such as &quot;Cellar&quot;.</source>
        <translation>请给风干室起个名称，例如“地窖”。</translation>
    </message>
    <message>
        <source>This is below the lowest temperature.</source>
        <translation>低于最低温度。</translation>
    </message>
    <message>
        <source>This is below the lowest humidity.</source>
        <translation>低于最低湿度。</translation>
    </message>
</context>
<context>
    <name>ui::pages::ChamberPage</name>
    <message>
        <source>Chambers</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>No chamber yet</source>
        <translation>尚无风干室</translation>
    </message>
    <message>
        <source>A chamber is where pieces cure or hang: a fridge, a cabinet, a cellar. Add one with the air you want in it; then import your logger&apos;s file to see how the air really was.</source>
        <translation>风干室是腌制或晾挂肉块的地方：冰箱、风干柜、地窖。添加一个并设定期望的空气条件；然后导入记录仪的文件，看看实际情况。</translation>
    </message>
    <message>
        <source>Add a chamber</source>
        <translation>添加风干室</translation>
    </message>
    <message>
        <source>About the chamber</source>
        <translation>关于此风干室</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>空气</translation>
    </message>
    <message>
        <source>&amp;Air</source>
        <translation>空气(&amp;A)</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>传感器</translation>
    </message>
    <message>
        <source>&amp;Sensors</source>
        <translation>传感器(&amp;S)</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>负荷</translation>
    </message>
    <message>
        <source>&amp;Load</source>
        <translation>负荷(&amp;L)</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>温湿度记录</translation>
    </message>
    <message>
        <source>L&amp;ogs</source>
        <translation>温湿度记录(&amp;O)</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>新建(&amp;N)…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>更改(&amp;C)…</translation>
    </message>
    <message>
        <source>Record an &amp;upset…</source>
        <translation>记录异常(&amp;U)…</translation>
    </message>
    <message>
        <source>&amp;Import a log…</source>
        <translation>导入温湿度记录(&amp;I)…</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>显示内容</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>drying force</source>
        <translation>干燥力</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>时长</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>一天</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>一周</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 天</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 天</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>一年</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>十年</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>传感器</translation>
    </message>
    <message>
        <source>Second sensor laid over it</source>
        <translation>叠加的第二个传感器</translation>
    </message>
    <message>
        <source>◀ &amp;Earlier</source>
        <translation>◀ 较早(&amp;E)</translation>
    </message>
    <message>
        <source>La&amp;ter ▶</source>
        <translation>较晚(&amp;T) ▶</translation>
    </message>
    <message>
        <source>Ne&amp;west</source>
        <translation>最新(&amp;W)</translation>
    </message>
    <message>
        <source>Out of band</source>
        <translation>超出范围</translation>
    </message>
    <message>
        <source>From</source>
        <translation>自</translation>
    </message>
    <message>
        <source>For</source>
        <translation>持续时间</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>最差值</translation>
    </message>
    <message>
        <source>Times out of band, half an hour or longer</source>
        <translation>超出范围半小时或更久的时段</translation>
    </message>
    <message>
        <source>no second sensor</source>
        <translation>无第二个传感器</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 watched, no time out of the band.</source>
        <translation>监测的 %1 中没有超出范围的时段。</translation>
    </message>
    <message>
        <source>Of %1 watched: %2.</source>
        <translation>监测的 %1 中：%2。</translation>
    </message>
    <message>
        <source>For %1 nothing is known.</source>
        <translation>其中 %1 情况未知。</translation>
    </message>
    <message>
        <source>Air in %1</source>
        <translation>%1 的空气</translation>
    </message>
    <message>
        <source>No sensor here yet: import a log, or add a sensor on the Sensors tab.</source>
        <translation>此处尚无传感器：请导入温湿度记录，或在“传感器”页添加。</translation>
    </message>
    <message>
        <source>This sensor has no readings yet: import a log.</source>
        <translation>此传感器尚无读数：请导入温湿度记录。</translation>
    </message>
    <message>
        <source>Batch about to be hung here</source>
        <translation>即将挂到这里的批次</translation>
    </message>
    <message>
        <source>&amp;What if this batch is hung here</source>
        <translation>如果把此批次挂到这里(&amp;W)</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>位置</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>重量</translation>
    </message>
    <message>
        <source>Hung for</source>
        <translation>已晾挂</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>Water a day</source>
        <translation>每天水分</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>依据</translation>
    </message>
    <message>
        <source>its weighings</source>
        <translation>其自身的称重</translation>
    </message>
    <message>
        <source>the usual pace of its age</source>
        <translation>同阶段的通常速度</translation>
    </message>
    <message>
        <source>Pieces by the water they give off</source>
        <translation>按放出水分排列的肉块</translation>
    </message>
    <message>
        <source>Air, sensors and load of the rooms where pieces hang</source>
        <translation>晾挂场所的空气、传感器和负荷</translation>
    </message>
    <message>
        <source>▲ never checked</source>
        <translation>▲ 从未校验</translation>
    </message>
    <message>
        <source>▲ due %1</source>
        <translation>▲ %1 到期</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>地点</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>读数</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>最近读数</translation>
    </message>
    <message>
        <source>Added to it</source>
        <translation>修正值</translation>
    </message>
    <message>
        <source>Salt-bag check</source>
        <translation>盐袋校验</translation>
    </message>
    <message>
        <source>Ice check</source>
        <translation>冰水校验</translation>
    </message>
    <message>
        <source>Sensors in this chamber</source>
        <translation>此风干室的传感器</translation>
    </message>
    <message>
        <source>Instruments are often wrong, and believed. Check each over a salt slurry every six months and after a battery change; the dates are common practice.</source>
        <translation>仪器常常不准，却被相信。每六个月及更换电池后，用湿盐糊逐个校验；这些期限是行业惯例。</translation>
    </message>
    <message>
        <source>Add a senso&amp;r…</source>
        <translation>添加传感器(&amp;R)…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>更改(&amp;G)…</translation>
    </message>
    <message>
        <source>Record a chec&amp;k…</source>
        <translation>记录校验(&amp;K)…</translation>
    </message>
    <message>
        <source>%1 of water a day, %2 % of what %3 can carry out.</source>
        <translation>每天放出 %1 水分，为 %3 可排出量的 %2 %。</translation>
    </message>
    <message>
        <source>%1 of water a day. What the chamber can carry out is not known: weigh the water it sheds in a day, and enter it under Change.</source>
        <translation>每天放出 %1 水分。风干室能排出多少未知：请称出一天排出的水量，并在“更改”中输入。</translation>
    </message>
    <message>
        <source>Nothing hangs here.</source>
        <translation>此处没有晾挂肉块。</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 与 %2</translation>
    </message>
    <message>
        <source>Worth swapping, the fast with the slow of the same age: %1.</source>
        <translation>值得对调，同龄中快的换慢的：%1。</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>导入时间</translation>
    </message>
    <message>
        <source>File</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>New readings</source>
        <translation>新读数</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>略去</translation>
    </message>
    <message>
        <source>To</source>
        <translation>至</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>已撤回</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>完整</translation>
    </message>
    <message>
        <source>▲ stopped half-way</source>
        <translation>▲ 中途停止</translation>
    </message>
    <message>
        <source>Logs taken in</source>
        <translation>已导入的温湿度记录</translation>
    </message>
    <message>
        <source>A watched folder&apos;s new files are taken in by themselves, once a first file of the sensor has been imported by hand.</source>
        <translation>先手动导入该传感器的第一个文件，之后监视文件夹中的新文件会自动导入。</translation>
    </message>
    <message>
        <source>Watch a &amp;folder…</source>
        <translation>监视文件夹(&amp;F)…</translation>
    </message>
    <message>
        <source>Take the newest log &amp;back</source>
        <translation>撤回最新的温湿度记录(&amp;B)</translation>
    </message>
    <message>
        <source>Stop watching the &amp;folder</source>
        <translation>停止监视文件夹(&amp;F)</translation>
    </message>
    <message>
        <source>Add a sensor first, so that the files have somewhere to go.</source>
        <translation>请先添加传感器，文件才有归处。</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>要监视的文件夹</translation>
    </message>
    <message>
        <source>logger</source>
        <translation>记录仪</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n place(s) are free.</source>
        <translation>
            <numerusform>%n 个挂位中空余 %1 个。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::CheckDialog</name>
    <message>
        <source>Check the book</source>
        <translation>检查记录簿</translation>
    </message>
    <message>
        <source>Reads %1 from end to end: pages, indexes, links between entries and the sums of climate readings. It changes nothing.</source>
        <translation>从头到尾读取 %1：页面、索引、条目间的关联和温湿度读数的汇总。不作任何更改。</translation>
    </message>
    <message>
        <source>The book is being read</source>
        <translation>正在读取记录簿</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>检查结果</translation>
    </message>
    <message>
        <source>Make the climate roll-ups a&amp;new</source>
        <translation>重新生成温湿度汇总(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>抢救到新记录簿(&amp;S)…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>恢复备份(&amp;R)…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>取消(&amp;C)</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>The check is under way. A book with years of climate readings takes a while.</source>
        <translation>正在检查。含有多年温湿度读数的记录簿需要一些时间。</translation>
    </message>
    <message>
        <source>The climate roll-ups are being made anew from the readings.</source>
        <translation>正在根据读数重新生成温湿度汇总。</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>This book is open for reading only: open it for writing to do that.</source>
        <translation>此记录簿以只读方式打开：要执行此操作，请以可写方式打开。</translation>
    </message>
</context>
<context>
    <name>ui::pages::CompareDialog</name>
    <message>
        <source>Pieces for one chart</source>
        <translation>同图显示的肉块</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>查找肉块</translation>
    </message>
    <message>
        <source>Find by code, piece, batch or product</source>
        <translation>按编号、肉块、批次或产品查找</translation>
    </message>
    <message>
        <source>Pieces, ticked ones are drawn</source>
        <translation>肉块，勾选的会画出</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>画出(&amp;D)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4</source>
        <extracomment>a piece: %1 its code, %2 its name, %3 its batch and product, %4 its state</extracomment>
        <translation>%1 · %2 · %3 · %4</translation>
    </message>
    <message>
        <source>No other piece was hung yet.</source>
        <translation>尚无其他肉块晾挂过。</translation>
    </message>
    <message>
        <source>%1 is the most a chart can tell apart; the newest are drawn.</source>
        <translation>一张图最多能分辨 %1 块；画出最新的。</translation>
    </message>
    <message>
        <source>Ticked: %1</source>
        <translation>已勾选：%1</translation>
    </message>
</context>
<context>
    <name>ui::pages::EntryDialog</name>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>保存(&amp;K)</translation>
    </message>
    <message>
        <source>%1
If this is right, press Keep again.</source>
        <translation>%1
如果无误，请再次点击“保存”。</translation>
    </message>
</context>
<context>
    <name>ui::pages::EventDialog</name>
    <message>
        <source>Drying starts. The net weight now is the hung weight that losses count from.</source>
        <translation>风干开始。现在的净重就是计算失重所依据的晾挂重量。</translation>
    </message>
    <message>
        <source>A casing or net was put on. Its weight is tare from now on.</source>
        <translation>装上了肠衣或网套。从现在起其重量计为皮重。</translation>
    </message>
    <message>
        <source>Casing or net was changed. The net weight stays; only the tare changes.</source>
        <translation>更换了肠衣或网套。净重不变；只有皮重改变。</translation>
    </message>
    <message>
        <source>Lard, paste or pepper was put on. The added weight is not meat.</source>
        <translation>涂上了猪油、香料膏或胡椒。增加的重量不是肉。</translation>
    </message>
    <message>
        <source>Something was cut off. Start and target shrink in proportion.</source>
        <translation>切去了一部分。起始重量和目标按比例减小。</translation>
    </message>
    <message>
        <source>A wedge was taken to taste. Start and target shrink in proportion.</source>
        <translation>切取了一小块品尝。起始重量和目标按比例减小。</translation>
    </message>
    <message>
        <source>The piece was pressed. Water pressed out counts as loss.</source>
        <translation>肉块经过压制。压出的水分计为失重。</translation>
    </message>
    <message>
        <source>The piece was washed or soaked. The next weighing may be wet.</source>
        <translation>肉块经过清洗或浸泡。下次称重时表面可能是湿的。</translation>
    </message>
    <message>
        <source>The piece hangs elsewhere now.</source>
        <translation>肉块现在挂在别处。</translation>
    </message>
    <message>
        <source>The piece was frozen. The cure clock stops.</source>
        <translation>肉块已冷冻。腌制计时停止。</translation>
    </message>
    <message>
        <source>The piece is thawed. The cure clock runs again.</source>
        <translation>肉块已解冻。腌制计时继续。</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>target net: %1</source>
        <translation>目标净重：%1</translation>
    </message>
    <message>
        <source>target on the scale: %1</source>
        <translation>目标秤上重量：%1</translation>
    </message>
    <message>
        <source>tare: %1</source>
        <translation>皮重：%1</translation>
    </message>
    <message>
        <source>No number changes.</source>
        <translation>没有数字改变。</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日期</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>日期(&amp;D)</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>时间(&amp;M)</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>之前净重</translation>
    </message>
    <message>
        <source>Net weight after</source>
        <translation>之后净重</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>之前净重(&amp;B)</translation>
    </message>
    <message>
        <source>Net weight &amp;after</source>
        <translation>之后净重(&amp;A)</translation>
    </message>
    <message>
        <source>Net weight as hung</source>
        <translation>晾挂时净重</translation>
    </message>
    <message>
        <source>&amp;Net weight as hung</source>
        <translation>晾挂时净重(&amp;N)</translation>
    </message>
    <message>
        <source>Tare from now on</source>
        <translation>今后皮重</translation>
    </message>
    <message>
        <source>&amp;Tare from now on</source>
        <translation>今后皮重(&amp;T)</translation>
    </message>
    <message>
        <source>New start weight</source>
        <translation>新起始重量</translation>
    </message>
    <message>
        <source>in proportion</source>
        <translation>按比例</translation>
    </message>
    <message>
        <source>New &amp;start, if not in proportion</source>
        <translation>新起始重量（不按比例时）(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>风干室(&amp;C)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>备注(&amp;O)</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>有何变化</translation>
    </message>
</context>
<context>
    <name>ui::pages::GuidePage</name>
    <message>
        <source>Guide</source>
        <translation>指南</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>章</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>各章</translation>
    </message>
    <message>
        <source>Text of the chapter</source>
        <translation>本章正文</translation>
    </message>
    <message>
        <source>Search the guide</source>
        <translation>搜索指南</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>上一处(&amp;V)</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <translation>下一处(&amp;X)</translation>
    </message>
    <message>
        <source>The guide is in English.</source>
        <translation>指南为英文。</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s)</source>
        <translation>
            <numerusform>%n 处</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n chapter(s)</source>
        <translation>
            <numerusform>%1，分布于 %n 章</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is not in the guide.</source>
        <translation>指南中没有“%1”。</translation>
    </message>
    <message>
        <source>How the work goes, what to do when, and the mathematics</source>
        <translation>工作怎么做、遇到情况怎么办，以及其中的数学</translation>
    </message>
</context>
<context>
    <name>ui::pages::HangingPage</name>
    <message>
        <source>What hangs</source>
        <translation>晾挂中</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>风干室(&amp;C)</translation>
    </message>
    <message>
        <source>Nothing hangs yet</source>
        <translation>尚无晾挂</translation>
    </message>
    <message>
        <source>When a piece comes out of the cure, open it and choose &quot;What happened: hung to dry&quot;. From its second weighing on it stands here on a time axis with the interval in which it is expected to reach its target.</source>
        <translation>肉块腌好取出后，打开它并选择“发生了什么：已晾挂风干”。从第二次称重起，它会出现在此处的时间轴上，并标出预计达到目标的时间区间。</translation>
    </message>
    <message>
        <source>Ready by</source>
        <translation>到此日做好</translation>
    </message>
    <message>
        <source>What is &amp;ready by</source>
        <translation>到此日做好的(&amp;R)</translation>
    </message>
    <message>
        <source>Drying pieces</source>
        <translation>风干中的肉块</translation>
    </message>
    <message>
        <source>Columns and dates</source>
        <translation>列和日期</translation>
    </message>
    <message>
        <source>Bar: how far the loss has come towards the target, from hanging to now. Box: 8 chances in 10 that the target is reached inside; the line in it is even odds. An arrow: it may never be. At target is not done: look, touch and cut before you decide.</source>
        <translation>横条：从晾挂至今，失重距目标已走了多少。方框：十次有八次在其中达到目标；框中的线表示机会各半。箭头：可能永远达不到。达到目标不等于做好：决定之前先看、摸、切。</translation>
    </message>
    <message>
        <source>It dries much faster or slower than the others of its batch.</source>
        <translation>它比同批次的其他肉块干得快得多或慢得多。</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>晾挂于</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>fast ▲ </source>
        <translation>快 ▲ </translation>
    </message>
    <message>
        <source>slow ▼ </source>
        <translation>慢 ▼ </translation>
    </message>
    <message>
        <source>At target</source>
        <translation>达到目标</translation>
    </message>
    <message>
        <source>all</source>
        <translation>全部</translation>
    </message>
    <message>
        <source>Type a day, such as a market or a feast, to see which pieces are expected to be at their target.</source>
        <translation>输入一个日期，如集市或节日，看看哪些肉块届时预计达到目标。</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Nine chances in ten or better: %1. More likely than not: %2. Possible: %3.</source>
        <translation>九成以上把握：%1。五成以上把握：%2。有可能：%3。</translation>
    </message>
    <message>
        <source>Drying pieces on a time axis, and what is ready by a day</source>
        <translation>时间轴上的风干肉块，以及某日之前可做好的</translation>
    </message>
    <message>
        <source>Nothing hangs.</source>
        <translation>没有晾挂的肉块。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a product, %2 sentences about earlier pieces of it</extracomment>
        <translation>%1：%2</translation>
    </message>
</context>
<context>
    <name>ui::pages::ImportLogDialog</name>
    <message>
        <source>as found in the file</source>
        <translation>按文件识别</translation>
    </message>
    <message>
        <source>Import a climate log</source>
        <translation>导入温湿度记录</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>导入进度</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>导入(&amp;I)</translation>
    </message>
    <message>
        <source>Choose the file your logger wrote. Nothing is stored before you press Import, and one Undo takes the whole log back.</source>
        <translation>请选择记录仪写出的文件。按“导入”之前不会保存任何内容，一次“撤销”即可撤回整个文件。</translation>
    </message>
    <message>
        <source>Log file</source>
        <translation>记录仪文件</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>选择(&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>传感器</translation>
    </message>
    <message>
        <source>&amp;Sensor</source>
        <translation>传感器(&amp;S)</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>日期格式</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>年、月、日</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>日、月、年</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>月、日、年</translation>
    </message>
    <message>
        <source>Temperature in</source>
        <translation>温度单位</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>小数点符号</translation>
    </message>
    <message>
        <source>point</source>
        <translation>点</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>逗号</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>时钟</translation>
    </message>
    <message>
        <source>local time of %1</source>
        <translation>%1 当地时间</translation>
    </message>
    <message>
        <source>winter time all year</source>
        <translation>全年冬令时</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>日期格式(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>温度单位(&amp;T)</translation>
    </message>
    <message>
        <source>D&amp;ecimal sign</source>
        <translation>小数点符号(&amp;E)</translation>
    </message>
    <message>
        <source>Cloc&amp;k</source>
        <translation>时钟(&amp;K)</translation>
    </message>
    <message>
        <source>What</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>Reads as</source>
        <translation>读作</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>把握</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>Or else</source>
        <translation>其他读法</translation>
    </message>
    <message>
        <source>How the file reads</source>
        <translation>文件的读法</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>湿度</translation>
    </message>
    <message>
        <source>First readings</source>
        <translation>最初的读数</translation>
    </message>
    <message>
        <source>Logs (*.csv *.txt *.tsv *.log);;All files (*)</source>
        <translation>记录仪文件 (*.csv *.txt *.tsv *.log);;所有文件 (*)</translation>
    </message>
    <message>
        <source>Part of this is a guess. Say above how the file is to be read; it is remembered for this sensor.</source>
        <translation>其中一部分是猜测。请在上面说明文件的读法；会为此传感器记住。</translation>
    </message>
    <message>
        <source>The file reads well.</source>
        <translation>文件读取正常。</translation>
    </message>
    <message>
        <source>&amp;Cancel the import</source>
        <translation>取消导入(&amp;C)</translation>
    </message>
    <message>
        <source>The first is line %1: %2.</source>
        <translation>第一处是第 %1 行：%2。</translation>
    </message>
    <message>
        <source>%1 say something else than the book, which was left as it is.</source>
        <translation>%1 与记录簿不同，记录簿保持原样。</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s)</source>
        <translation>
            <numerusform>%n 个读数</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the first %1 lines %n are no readings; they will be left out.</source>
        <translation>
            <numerusform>前 %1 行中有 %n 行不是读数；将被略去。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n reading(s) are new.</source>
        <translation>
            <numerusform>%n 个读数中有 %1 个是新的。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped. %n reading(s) were taken in before; Undo takes them back.</source>
        <translation>
            <numerusform>已停止。此前已导入 %n 个读数；可用“撤销”撤回。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) are no readings.</source>
        <translation>
            <numerusform>%n 行不是读数。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::KeepByFields</name>
    <message>
        <source>Rule for keeping it</source>
        <translation>保存规则</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>保存至</translation>
    </message>
    <message>
        <source>Why this day</source>
        <translation>选此日期的原因</translation>
    </message>
    <message>
        <source>needed for a day of your own</source>
        <translation>自定日期时必填</translation>
    </message>
    <message>
        <source>none: your own day, or no day</source>
        <translation>无：自定日期，或不设日期</translation>
    </message>
    <message>
        <source>Without a rule the day is yours. How long a pack keeps depends on the product, its dryness and the cold; follow your own code.</source>
        <translation>不用规则时，日期由您决定。成品包能存放多久取决于产品、干燥程度和冷藏温度；请遵守当地法规。</translation>
    </message>
</context>
<context>
    <name>ui::pages::LostWeightDialog</name>
    <message>
        <source>%1: a weight is lost</source>
        <translation>%1：缺少一个重量</translation>
    </message>
    <message>
        <source>Enter as an &amp;estimate</source>
        <translation>作为估计值录入(&amp;E)</translation>
    </message>
    <message>
        <source>No start weight can be found missing</source>
        <translation>没有缺少的起始重量</translation>
    </message>
    <message>
        <source>Raw and hung weight are both in the book, or the piece was never weighed. A weighing that was missed later needs nothing: the curve has no fixed rhythm.</source>
        <translation>鲜重和晾挂重量都已在记录簿中，或者该肉块从未称重。之后漏称一次无需处理：曲线没有固定的节奏。</translation>
    </message>
    <message>
        <source>Which weight is lost</source>
        <translation>缺少哪个重量</translation>
    </message>
    <message>
        <source>Day it should have been taken</source>
        <translation>本应称重的日期</translation>
    </message>
    <message>
        <source>Net weight, estimated</source>
        <translation>净重，估计值</translation>
    </message>
    <message>
        <source>Which weight is &amp;lost</source>
        <translation>缺少哪个重量(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Day it should have been taken</source>
        <translation>本应称重的日期(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Net weight, estimated</source>
        <translation>净重，估计值(&amp;N)</translation>
    </message>
    <message>
        <source>What can be said of it</source>
        <translation>对它能说些什么</translation>
    </message>
    <message>
        <source>Entered as an estimate it stands in the list with its range. Losses count from it and are as uncertain as it is; the curve does not lean on it. It can be undone.</source>
        <translation>作为估计值录入后，它会带着范围列在表中。失重从它算起，与它一样不确定；曲线不以它为依据。可以撤销。</translation>
    </message>
    <message>
        <source>Or leave it unknown</source>
        <translation>或者让它保持未知</translation>
    </message>
    <message>
        <source>Cancel, and nothing is made up: the days since hanging, the rate from weighing to weighing and the loss from every weight that is known are still counted. The target can be bound to one of those under Change.</source>
        <translation>取消则不会编造任何数值：晾挂以来的天数、每次称重之间的速度，以及相对每个已知重量的失重仍会计算。可在“更改”中把目标绑定到其中之一。</translation>
    </message>
    <message>
        <source>Enter the day, and the estimate stands here.</source>
        <translation>输入日期，估计值就会显示在这里。</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>正在推算…</translation>
    </message>
    <message numerus="yes">
        <source>About %1; 8 in 10 such pieces lie between %2 and %3. From %n piece(s) of its batch and the air they hung in.</source>
        <translation>
            <numerusform>约 %1；此类肉块 10 块中有 8 块介于 %2 与 %3 之间。依据同批 %n 块肉及其晾挂处的空气。</numerusform>
        </translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a raw and a hung weight are needed.</source>
        <translation>没有同批肉块可供参照：需要两块既有鲜重又有晾挂重量的同批肉块。</translation>
    </message>
    <message>
        <source>No sibling can say: two pieces of the batch with a hung weight, five weighings and half their target lost are needed.</source>
        <translation>没有同批肉块可供参照：需要两块有晾挂重量、至少五次称重且已达到目标失重一半的同批肉块。</translation>
    </message>
    <message>
        <source>By its form and the air alone it lay between %1 and %2: too wide to count from.</source>
        <translation>仅凭形状和空气，它介于 %1 与 %2 之间：范围太宽，不能作为起点。</translation>
    </message>
    <message>
        <source>There is no estimate to enter yet.</source>
        <translation>还没有可录入的估计值。</translation>
    </message>
</context>
<context>
    <name>ui::pages::MainWindow</name>
    <message>
        <source>Daily round</source>
        <translation>每日巡查</translation>
    </message>
    <message>
        <source>The book</source>
        <translation>记录簿</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>场所</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>最近的操作</translation>
    </message>
    <message>
        <source>The open book</source>
        <translation>打开的记录簿</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>导航</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>页面</translation>
    </message>
    <message>
        <source>Invented data: this book shows a producer that does not exist. Nothing you do here touches your own book.</source>
        <translation>虚构数据：此记录簿展示的是并不存在的生产者。您在此处的任何操作都不影响您自己的记录簿。</translation>
    </message>
    <message>
        <source>This book is open for reading only.</source>
        <translation>此记录簿以只读方式打开。</translation>
    </message>
    <message>
        <source>Demonstration book</source>
        <translation>演示记录簿</translation>
    </message>
    <message>
        <source>%1 – Saltloft</source>
        <translation>%1 – Saltloft</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>撤销</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>重做</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>菜单</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>记录簿(&amp;B)</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>记录簿</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>新建记录簿(&amp;N)…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>打开记录簿(&amp;O)…</translation>
    </message>
    <message>
        <source>Open the &amp;demonstration book</source>
        <translation>打开演示记录簿(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Back up a copy…</source>
        <translation>备份副本(&amp;B)…</translation>
    </message>
    <message>
        <source>&amp;Print this page…</source>
        <translation>打印此页(&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>退出(&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>编辑(&amp;E)</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>编辑</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>转到(&amp;G)</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>转到</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>返回(&amp;B)</translation>
    </message>
    <message>
        <source>To the &amp;places</source>
        <translation>转到导航栏(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>帮助(&amp;H)</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>帮助</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>注意事项(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;About Saltloft</source>
        <translation>关于 Saltloft(&amp;A)</translation>
    </message>
    <message>
        <source>About Saltloft</source>
        <translation>关于 Saltloft</translation>
    </message>
    <message>
        <source>Saltloft %1

Plan, weigh and follow cured and air-dried meat.

Free software under the GNU General Public License, version 3 or later.
It keeps records and computes; it does not decide whether food may be eaten.</source>
        <translation>Saltloft %1

计划、称量并跟踪腌制和风干的肉。

自由软件，采用 GNU 通用公共许可证第 3 版或更高版本。
它只做记录和计算；不决定食物能不能吃。</translation>
    </message>
    <message>
        <source>The demonstration book is made anew each time; there is nothing to restore.</source>
        <translation>演示记录簿每次都重新生成；没有可恢复的内容。</translation>
    </message>
    <message>
        <source>This book is open elsewhere. Close it there and open it again to restore a backup.</source>
        <translation>此记录簿在别处打开着。请在那里关闭后重新打开，再恢复备份。</translation>
    </message>
    <message>
        <source>This book may only be read by you. Free the permissions of the file and its folder to restore a backup.</source>
        <translation>您对此记录簿只有读取权限。请放开该文件及其文件夹的权限，再恢复备份。</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>恢复备份(&amp;R)…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of this book</source>
        <translation>用较早的副本替换此记录簿</translation>
    </message>
    <message>
        <source>&amp;Check the book…</source>
        <translation>检查记录簿(&amp;C)…</translation>
    </message>
    <message>
        <source>Reads the book from end to end and says whether it is whole</source>
        <translation>从头到尾读取记录簿，说明它是否完整</translation>
    </message>
    <message>
        <source>This page has nothing to print.</source>
        <translation>本页没有可打印的内容。</translation>
    </message>
    <message>
        <source>&amp;Guide to this page</source>
        <translation>本页指南(&amp;G)</translation>
    </message>
</context>
<context>
    <name>ui::pages::MergeDialog</name>
    <message>
        <source>Weigh %1 with others as one</source>
        <translation>把 %1 与其他肉块合并称重</translation>
    </message>
    <message>
        <source>Weighed together with</source>
        <translation>一起称重的肉块</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code of the bundle</source>
        <translation>合并组编号</translation>
    </message>
    <message>
        <source>All together on the scale</source>
        <translation>秤上合计重量</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;Weighed together with</source>
        <translation>一起称重的肉块(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Code of the bundle</source>
        <translation>合并组编号(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;All together on the scale</source>
        <translation>秤上合计重量(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>皮重(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>Mark at least one other piece.</source>
        <translation>请至少再选一块肉。</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>有何变化</translation>
    </message>
    <message>
        <source>Mark the pieces and weigh them together; the new start and target then stand here.</source>
        <translation>请勾选肉块并一起称重；新的起始重量和目标随后显示在这里。</translation>
    </message>
    <message>
        <source>Weighed apart: %1 net; together: %2 net</source>
        <translation>分开称：净重 %1；一起称：净重 %2</translation>
    </message>
    <message>
        <source>No other piece of this batch is at the same stage: there is none to weigh it with.</source>
        <translation>本批次没有处于同一阶段的其他肉块：没有可以一起称的。</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixLines</name>
    <message>
        <source>Ingredient</source>
        <translation>配料</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>用量</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>基准</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>标签标明</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>固定</translation>
    </message>
    <message>
        <source>Ingredient of line %1</source>
        <translation>第 %1 行的配料</translation>
    </message>
    <message>
        <source>Amount of line %1</source>
        <translation>第 %1 行的用量</translation>
    </message>
    <message>
        <source>2.5 %, 40 g, 100 mL</source>
        <translation>2.5 %，40 g，100 mL</translation>
    </message>
    <message>
        <source>What line %1 is a share of</source>
        <translation>第 %1 行按什么取比例</translation>
    </message>
    <message>
        <source>What the label of line %1 says</source>
        <translation>第 %1 行的标签标明</translation>
    </message>
    <message>
        <source>Hold line %1 as it is</source>
        <translation>第 %1 行保持不变</translation>
    </message>
    <message>
        <source>Take line %1 out</source>
        <translation>删去第 %1 行</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixOwnDialog</name>
    <message>
        <source>An ingredient of my own</source>
        <translation>自定义配料</translation>
    </message>
    <message>
        <source>Enter what the label says; divide the figures with semicolons. Words: nitrite, nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).</source>
        <translation>请按标签输入；各项数字用半角分号 ; 隔开。可用的词：nitrite、nitrate、salt、sodium、sugar、alcohol、acid、water、density（g/mL），须照此英文书写。</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>类型</translation>
    </message>
    <message>
        <source>Sauce</source>
        <translation>酱汁</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>腌制盐</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>盐</translation>
    </message>
    <message>
        <source>Sugar or syrup</source>
        <translation>糖或糖浆</translation>
    </message>
    <message>
        <source>Spirit</source>
        <translation>烈酒</translation>
    </message>
    <message>
        <source>Wine</source>
        <translation>葡萄酒</translation>
    </message>
    <message>
        <source>Vinegar</source>
        <translation>醋</translation>
    </message>
    <message>
        <source>Spice or herb</source>
        <translation>香料或香草</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>其他</translation>
    </message>
    <message>
        <source>What its label says</source>
        <translation>标签标明的内容</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>类型(&amp;K)</translation>
    </message>
    <message>
        <source>On the &amp;label</source>
        <translation>标签标明(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>添加(&amp;A)</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>请为它起个名称。</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixPage</name>
    <message>
        <source>Mix bench</source>
        <translation>配料台</translation>
    </message>
    <message>
        <source>The meat and the recipe</source>
        <translation>肉和配方</translation>
    </message>
    <message>
        <source>Weight of the meat</source>
        <translation>肉的重量</translation>
    </message>
    <message>
        <source>1500 g; several pieces: 820 g; 1180 g</source>
        <translation>1500 g；多块肉：820 g; 1180 g</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>配方</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>版本</translation>
    </message>
    <message>
        <source>Name of the recipe</source>
        <translation>配方名称</translation>
    </message>
    <message>
        <source>&amp;Weight of the meat</source>
        <translation>肉的重量(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Recipe</source>
        <translation>配方(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Version</source>
        <translation>版本(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Add a line</source>
        <translation>添加一行(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Ingredient of my own...</source>
        <translation>自定义配料(&amp;I)...</translation>
    </message>
    <message>
        <source>How, and against which limits</source>
        <translation>方法和适用限量</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>方法</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>限量</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>未选择</translation>
    </message>
    <message>
        <source>The scale shows steps of</source>
        <translation>秤的分度值</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>未说明</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Pickle taken up</source>
        <translation>吸收的腌液</translation>
    </message>
    <message>
        <source>10 % of the meat</source>
        <translation>占肉重的 10 %</translation>
    </message>
    <message>
        <source>Pickle taken &amp;up</source>
        <translation>吸收的腌液(&amp;U)</translation>
    </message>
    <message>
        <source>Expected loss of weight</source>
        <translation>预期失重率</translation>
    </message>
    <message>
        <source>35 %, for limits on finished meat</source>
        <translation>35 %，用于针对成品的限量</translation>
    </message>
    <message>
        <source>S&amp;kin on</source>
        <translation>带皮(&amp;K)</translation>
    </message>
    <message>
        <source>Skin on</source>
        <translation>带皮</translation>
    </message>
    <message>
        <source>&amp;Fatty cut (belly, jowl)</source>
        <translation>肥的部位（五花、猪颊）(&amp;F)</translation>
    </message>
    <message>
        <source>Fatty cut (belly, jowl)</source>
        <translation>肥的部位（五花、猪颊）</translation>
    </message>
    <message>
        <source>&amp;Method</source>
        <translation>方法(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Limits</source>
        <translation>限量(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Scale step</source>
        <translation>秤的分度值(&amp;S)</translation>
    </message>
    <message>
        <source>Expected l&amp;oss</source>
        <translation>预期失重率(&amp;O)</translation>
    </message>
    <message>
        <source>Find the amounts</source>
        <translation>求用量</translation>
    </message>
    <message>
        <source>Tick Hold on the lines that must stay, say what you want, and the other lines are found. What cannot be met is named.</source>
        <translation>给必须保持的行勾选“固定”，写明想要的值，其余各行即可求出。无法满足的会指明。</translation>
    </message>
    <message>
        <source>Salt wanted, of the meat</source>
        <translation>想要的盐，占肉重</translation>
    </message>
    <message>
        <source>2.75 %</source>
        <translation>2.75 %</translation>
    </message>
    <message>
        <source>Nitrite wanted, of the meat</source>
        <translation>想要的亚硝酸盐，占肉重</translation>
    </message>
    <message>
        <source>120 ppm</source>
        <translation>120 ppm</translation>
    </message>
    <message>
        <source>Salt wan&amp;ted</source>
        <translation>想要的盐(&amp;T)</translation>
    </message>
    <message>
        <source>Nitrite wante&amp;d</source>
        <translation>想要的亚硝酸盐(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Find the rest</source>
        <translation>求其余用量(&amp;F)</translation>
    </message>
    <message>
        <source>Put on the scale</source>
        <translation>上秤称取</translation>
    </message>
    <message>
        <source>What to put on the scale</source>
        <translation>上秤称取什么</translation>
    </message>
    <message>
        <source>What that is</source>
        <translation>相当于什么</translation>
    </message>
    <message>
        <source>Compare with another recipe</source>
        <translation>与另一配方比较</translation>
    </message>
    <message>
        <source>&amp;Compare with</source>
        <translation>比较对象(&amp;C)</translation>
    </message>
    <message>
        <source>What the meat gets</source>
        <translation>肉得到的量</translation>
    </message>
    <message>
        <source>Against the limits</source>
        <translation>与限量比对</translation>
    </message>
    <message>
        <source>The dose against the limits</source>
        <translation>用量与限量比对</translation>
    </message>
    <message>
        <source>Look at this first</source>
        <translation>请先看这里</translation>
    </message>
    <message>
        <source>Why this version</source>
        <translation>为何有此版本</translation>
    </message>
    <message>
        <source>what changed, for your later self</source>
        <translation>改了什么，供日后参考</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>原因(&amp;Y)</translation>
    </message>
    <message>
        <source>&amp;Keep this recipe</source>
        <translation>保存此配方(&amp;K)</translation>
    </message>
    <message>
        <source>These sums are no verdict on the food. Local codes, licensed practice and laboratory measurement come first.</source>
        <translation>这些计算不是对食物的结论。当地法规、持证操作和实验室测量优先。</translation>
    </message>
    <message>
        <source>What to weigh for this meat, and what dose that really is</source>
        <translation>这份肉要称什么，实际用量是多少</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>新配方</translation>
    </message>
    <message>
        <source>no other</source>
        <translation>不比较</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1，版本 %2</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>版本 %1</translation>
    </message>
    <message>
        <source>version %1: %2</source>
        <translation>版本 %1：%2</translation>
    </message>
    <message>
        <source>Enter the weight of the meat, and here stands what to weigh for it.</source>
        <translation>输入肉的重量，这里就会显示要称取什么。</translation>
    </message>
    <message>
        <source>Read, and taken on</source>
        <translation>已阅并确认</translation>
    </message>
    <message>
        <source>Caution read and taken on: %1</source>
        <translation>警告已阅并确认：%1</translation>
    </message>
    <message>
        <source>Stopped. To mend before this can be used: %1.</source>
        <translation>已停止。使用前须改正：%1。</translation>
    </message>
    <message>
        <source>Cautions to read and take on by name: %1.</source>
        <translation>须署名阅读并确认的警告：%1。</translation>
    </message>
    <message>
        <source>Nothing stands open.</source>
        <translation>没有未决事项。</translation>
    </message>
    <message>
        <source>Enter the weight of the meat first.</source>
        <translation>请先输入肉的重量。</translation>
    </message>
    <message>
        <source>Say how much salt or nitrite you want.</source>
        <translation>请写明想要多少盐或亚硝酸盐。</translation>
    </message>
    <message>
        <source>Mend the stops first: something is not known yet.</source>
        <translation>请先改正停止项：还有内容未知。</translation>
    </message>
    <message>
        <source>Found: the lines not held were changed.</source>
        <translation>已求出：未固定的各行已更改。</translation>
    </message>
    <message>
        <source>Give the recipe a name first.</source>
        <translation>请先给配方起个名称。</translation>
    </message>
    <message>
        <source>Nothing has changed since the last version.</source>
        <translation>自上一版本以来没有变化。</translation>
    </message>
    <message>
        <source>Use it for a &amp;batch…</source>
        <translation>用于批次(&amp;B)…</translation>
    </message>
    <message>
        <source>The salt of this recipe cannot be changed by itself: it is held, or comes with the curing salt or a pickle. Say it as a wish and find the rest.</source>
        <translation>此配方的盐不能单独更改：它已固定，或来自腌制盐或腌液。请把它写成目标，再求其余用量。</translation>
    </message>
    <message>
        <source>Mix sheet</source>
        <translation>配料单</translation>
    </message>
    <message>
        <source>Read the cautions and take each of them on first.</source>
        <translation>请先阅读各项警告并逐项确认。</translation>
    </message>
    <message>
        <source>The batch&apos;s record names this recipe and the cautions now.</source>
        <translation>批次记录现已写明此配方和各项警告。</translation>
    </message>
</context>
<context>
    <name>ui::pages::MixUseDialog</name>
    <message>
        <source>Use %1 for a batch</source>
        <translation>把 %1 用于批次</translation>
    </message>
    <message>
        <source>The batch&apos;s record then names this version as the recipe it was salted with, and prints each caution with who took it on and when.</source>
        <translation>此后批次记录会写明上盐时用的是这一配方版本，并印出每项警告以及由谁在何时确认。</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Taken on by</source>
        <translation>确认人</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>&amp;Batch</source>
        <translation>批次(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Taken on by</source>
        <translation>确认人(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>原因(&amp;W)</translation>
    </message>
    <message numerus="yes">
        <source>%n caution(s) taken on</source>
        <translation>
            <numerusform>已确认 %n 项警告</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put it in the book</source>
        <translation>写入记录簿(&amp;P)</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first; this recipe is kept meanwhile.</source>
        <translation>还没有未结批次。请先新建一个；此配方会先保留。</translation>
    </message>
    <message>
        <source>There is no open batch yet. Start one first.</source>
        <translation>还没有未结批次。请先新建一个。</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>请说明由谁确认这些警告：选择或输入姓名。</translation>
    </message>
</context>
<context>
    <name>ui::pages::MonthView</name>
    <message>
        <source>%1 more</source>
        <translation>另有 %1 项</translation>
    </message>
</context>
<context>
    <name>ui::pages::NewBatchPage</name>
    <message>
        <source>New batch</source>
        <translation>新建批次</translation>
    </message>
    <message>
        <source>The meat</source>
        <translation>肉</translation>
    </message>
    <message>
        <source>Batch code</source>
        <translation>批次编号</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>产品</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>动物种类</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>供应商</translation>
    </message>
    <message>
        <source>Supplier&apos;s lot</source>
        <translation>供应商批号</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>开始日期</translation>
    </message>
    <message>
        <source>Batch &amp;code</source>
        <translation>批次编号(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>产品(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Started</source>
        <translation>开始日期(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>动物种类(&amp;A)</translation>
    </message>
    <message>
        <source>S&amp;upplier</source>
        <translation>供应商(&amp;U)</translation>
    </message>
    <message>
        <source>Supplier&apos;s &amp;lot</source>
        <translation>供应商批号(&amp;L)</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Raw weight as it goes into the cure, without wrapping. Measure the thickness at the thickest point.</source>
        <translation>腌制前的鲜重，不含包装。厚度在最厚处测量。</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>增加一块(&amp;M)</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>减少一块(&amp;F)</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>目标失重率</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>计算基准</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>计划</translation>
    </message>
    <message>
        <source>no plan</source>
        <translation>无计划</translation>
    </message>
    <message>
        <source>Loss aimed f&amp;or</source>
        <translation>目标失重率(&amp;O)</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>计算基准(&amp;R)</translation>
    </message>
    <message>
        <source>Pl&amp;an</source>
        <translation>计划(&amp;A)</translation>
    </message>
    <message>
        <source>The cure: dry, weighed, all of it taken up</source>
        <translation>腌法：干腌，定量，全部吸收</translation>
    </message>
    <message>
        <source>Shares are of the raw weight. Curing salt counts by the strength on its packet, not by its name or colour.</source>
        <translation>各比例均以鲜重计。腌制盐按其包装上的浓度计，不按名称或颜色。</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>盐</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>糖</translation>
    </message>
    <message>
        <source>Curing salt</source>
        <translation>腌制盐</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>Curing salt, dose</source>
        <translation>腌制盐用量</translation>
    </message>
    <message>
        <source>Nitrite on the label</source>
        <translation>标签上的亚硝酸盐</translation>
    </message>
    <message>
        <source>as listed</source>
        <translation>按目录</translation>
    </message>
    <message>
        <source>Nitrate on the label</source>
        <translation>标签上的硝酸盐</translation>
    </message>
    <message>
        <source>Sal&amp;t</source>
        <translation>盐(&amp;T)</translation>
    </message>
    <message>
        <source>Su&amp;gar</source>
        <translation>糖(&amp;G)</translation>
    </message>
    <message>
        <source>Weighed &amp;on</source>
        <translation>所用的秤(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Dose of it</source>
        <translation>其用量(&amp;D)</translation>
    </message>
    <message>
        <source>N&amp;itrite on the label</source>
        <translation>标签上的亚硝酸盐(&amp;I)</translation>
    </message>
    <message>
        <source>Nitrat&amp;e on the label</source>
        <translation>标签上的硝酸盐(&amp;E)</translation>
    </message>
    <message>
        <source>Mix sheet: what to weigh for each piece</source>
        <translation>配料单：每块肉要称什么</translation>
    </message>
    <message>
        <source>Start the &amp;batch</source>
        <translation>开始此批次(&amp;B)</translation>
    </message>
    <message>
        <source>Code of piece %1</source>
        <translation>肉块 %1 的编号</translation>
    </message>
    <message>
        <source>Cut of piece %1</source>
        <translation>肉块 %1 的部位</translation>
    </message>
    <message>
        <source>Raw weight of piece %1</source>
        <translation>肉块 %1 的鲜重</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>肉块 %1 的厚度</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>肉块 %1 的形状</translation>
    </message>
    <message>
        <source>code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>cut or description</source>
        <translation>部位或说明</translation>
    </message>
    <message>
        <source>raw weight</source>
        <translation>鲜重</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>Meat, pieces, cure and plan of a new batch</source>
        <translation>新批次的肉、肉块、腌料和计划</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>Without a plan there are no dated tasks; weighings and forecasts work all the same.</source>
        <translation>没有计划就没有带日期的任务；称重和预测照常可用。</translation>
    </message>
    <message>
        <source>Enter a raw weight to see what to put on the scale.</source>
        <translation>输入鲜重，即可看到要称取什么。</translation>
    </message>
    <message>
        <source>Weigh out</source>
        <translation>称取</translation>
    </message>
    <message>
        <source>All at once</source>
        <translation>全部合计</translation>
    </message>
    <message>
        <source>Off by the scale&apos;s step</source>
        <translation>分度值误差</translation>
    </message>
    <message>
        <source>up to ± %1</source>
        <translation>至多 ± %1</translation>
    </message>
    <message>
        <source>Meat: %1</source>
        <translation>肉：%1</translation>
    </message>
    <message>
        <source>salt in all: %1 of the meat</source>
        <translation>盐合计：占肉重 %1</translation>
    </message>
    <message>
        <source>nitrite going in: %1 (as sodium nitrite)</source>
        <translation>亚硝酸盐添加量：%1（以亚硝酸钠计）</translation>
    </message>
    <message>
        <source>nitrate going in: %1 (as sodium nitrate)</source>
        <translation>硝酸盐添加量：%1（以硝酸钠计）</translation>
    </message>
    <message>
        <source>Within %1, by %2.</source>
        <translation>在 %1 以内，依据 %2。</translation>
    </message>
    <message>
        <source>Not to be computed from the recipe: %1.</source>
        <translation>无法由配方计算：%1。</translation>
    </message>
    <message>
        <source>No limits are chosen; choose those of your country in Preferences.</source>
        <translation>没有选择限量；请在“设置”中选择您所在国家的限量。</translation>
    </message>
    <message>
        <source>A field needs mending; it says how.</source>
        <translation>有字段需要改正；字段处有说明。</translation>
    </message>
    <message>
        <source>The cure has a stop above. Mend it first.</source>
        <translation>上面的腌料有停止项。请先改正。</translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s), from %1 to about %2.</source>
        <translation>
            <numerusform>%n 个阶段，从 %1 到约 %2。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::NoteDialog</name>
    <message>
        <source>Add a note</source>
        <translation>添加备注</translation>
    </message>
    <message>
        <source>About</source>
        <translation>关于</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;About</source>
        <translation>关于(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>Add a &amp;photo…</source>
        <translation>添加照片(&amp;P)…</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>添加照片</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>图片 (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>This photo cannot be read or is larger than 12 MB. Choose a smaller copy.</source>
        <translation>此照片无法读取或大于 12 MB。请选择较小的副本。</translation>
    </message>
    <message>
        <source>Write a few words or add a photo.</source>
        <translation>请写几个字或添加照片。</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be shown. Choose a JPEG or PNG file.</source>
        <translation>%1 不是可显示的图片。请选择 JPEG 或 PNG 文件。</translation>
    </message>
</context>
<context>
    <name>ui::pages::OpenTroubleDialog</name>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>恢复备份(&amp;R)…</translation>
    </message>
    <message>
        <source>Puts an earlier copy in its place; the file as it is now is kept under another name.</source>
        <translation>用较早的副本替换；当前的文件以另一名称保留。</translation>
    </message>
    <message>
        <source>&amp;Salvage into a new book…</source>
        <translation>抢救到新记录簿(&amp;S)…</translation>
    </message>
    <message>
        <source>Carries every entry that can still be read into a new book; this one is not changed.</source>
        <translation>把还能读取的每个条目转存到新记录簿；原记录簿不变。</translation>
    </message>
    <message>
        <source>&amp;Open another book…</source>
        <translation>打开另一个记录簿(&amp;O)…</translation>
    </message>
    <message>
        <source>Leaves this file as it is.</source>
        <translation>此文件保持原样。</translation>
    </message>
    <message>
        <source>Make a &amp;new book…</source>
        <translation>新建记录簿(&amp;N)…</translation>
    </message>
    <message>
        <source>Starts an empty book in another file.</source>
        <translation>在另一文件中新建空的记录簿。</translation>
    </message>
    <message>
        <source>The book did not open</source>
        <translation>记录簿未能打开</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
</context>
<context>
    <name>ui::pages::OutcomeDialog</name>
    <message>
        <source>not said</source>
        <translation>未说明</translation>
    </message>
    <message>
        <source>How %1 came out</source>
        <translation>%1 的成品如何</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>咸淡</translation>
    </message>
    <message>
        <source>Texture</source>
        <translation>质地</translation>
    </message>
    <message>
        <source>What to change next time</source>
        <translation>下次要改什么</translation>
    </message>
    <message>
        <source>&amp;Salt</source>
        <translation>咸淡(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Texture</source>
        <translation>质地(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;What to change next time</source>
        <translation>下次要改什么(&amp;W)</translation>
    </message>
    <message>
        <source>The next plan, mix and batch of this product show what this suggests. Nothing is changed unless you say so.</source>
        <translation>此产品的下一个计划、配料和批次会显示由此得出的建议。未经您同意不作任何更改。</translation>
    </message>
    <message>
        <source>Say how it came out, or write a few words.</source>
        <translation>请说明成品如何，或写几个字。</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackChangeDialog</name>
    <message>
        <source>Change pack %1</source>
        <translation>更改成品包 %1</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>包上的编号</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>存放处</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>开封日期</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>包上的编号(&amp;C)</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>存放处(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Opened on</source>
        <translation>开封日期(&amp;O)</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>保存至(&amp;U)</translation>
    </message>
    <message>
        <source>How</source>
        <translation>方式</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>方式(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>保存规则(&amp;R)</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>选此日期的原因(&amp;Y)</translation>
    </message>
</context>
<context>
    <name>ui::pages::PackDialog</name>
    <message>
        <source>Pack a finished piece</source>
        <translation>包装成品肉块</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Code on the pack</source>
        <translation>包上的编号</translation>
    </message>
    <message>
        <source>How</source>
        <translation>方式</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>重量</translation>
    </message>
    <message>
        <source>Packed on</source>
        <translation>包装日期</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>存放处</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>肉块(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Code on the pack</source>
        <translation>包上的编号(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>方式(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>重量(&amp;W)</translation>
    </message>
    <message>
        <source>Packed &amp;on</source>
        <translation>包装日期(&amp;O)</translation>
    </message>
    <message>
        <source>Where it &amp;lies</source>
        <translation>存放处(&amp;L)</translation>
    </message>
    <message>
        <source>No piece is finished yet. Sign a piece as done in its review first.</source>
        <translation>还没有做好的肉块。请先在评定中签名确认肉块做好。</translation>
    </message>
    <message>
        <source>This day is your own. Say why in a few words, or choose a rule.</source>
        <translation>此日期为自定。请简单说明原因，或选择一条规则。</translation>
    </message>
    <message>
        <source>&amp;Rule for keeping it</source>
        <translation>保存规则(&amp;R)</translation>
    </message>
    <message>
        <source>Keep &amp;until</source>
        <translation>保存至(&amp;U)</translation>
    </message>
    <message>
        <source>Wh&amp;y this day</source>
        <translation>选此日期的原因(&amp;Y)</translation>
    </message>
    <message>
        <source>Such a day says when to look, not what to think of it. Look, smell and decide at each opening.</source>
        <translation>这个日期只说明何时查看，并不作判断。每次开封都要看、闻，再决定。</translation>
    </message>
</context>
<context>
    <name>ui::pages::PastBox</name>
    <message>
        <source>Take it back</source>
        <translation>撤回</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>采用</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>撤回：%1</translation>
    </message>
    <message>
        <source>Use it: %1</source>
        <translation>采用：%1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonBox</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>choose or type a name</source>
        <translation>选择或输入姓名</translation>
    </message>
</context>
<context>
    <name>ui::pages::PersonDialog</name>
    <message>
        <source>Change a person</source>
        <translation>更改人员</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>添加人员</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>姓名</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>签名缩写</translation>
    </message>
    <message>
        <source>&amp;Works here now</source>
        <translation>目前在此工作(&amp;W)</translation>
    </message>
    <message>
        <source>Works here now</source>
        <translation>目前在此工作</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>姓名(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Initials, as signed</source>
        <translation>签名缩写，与签字一致(&amp;I)</translation>
    </message>
    <message>
        <source>Enter a name and the initials to sign with.</source>
        <translation>请输入姓名和签名用的缩写。</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoDialog</name>
    <message>
        <source>Photo</source>
        <translation>照片</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation>上一张(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>下一张(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>另存副本(&amp;S)…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>%1 of %2 · %3 · %4 · %5</source>
        <translation>%1 / %2 · %3 · %4 · %5</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>照片 %1</translation>
    </message>
    <message>
        <source>Save a copy of the photo</source>
        <translation>保存照片副本</translation>
    </message>
    <message>
        <source>The copy is in %1.</source>
        <translation>副本已保存在 %1。</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 无法写入。请换一个位置。</translation>
    </message>
</context>
<context>
    <name>ui::pages::PhotoStrip</name>
    <message>
        <source>The photo %1 cannot be shown: it is damaged, or of a kind that cannot be read here. Save a copy to try it elsewhere.</source>
        <translation>照片 %1 无法显示：它已损坏，或其类型在此无法读取。请保存副本，在别处尝试打开。</translation>
    </message>
    <message>
        <source>The photo %1 is no longer in the book. The note itself is kept.</source>
        <translation>照片 %1 已不在记录簿中。备注本身仍保留。</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>照片</translation>
    </message>
    <message>
        <source>%1: not readable</source>
        <translation>%1：无法读取</translation>
    </message>
    <message>
        <source>Photo of %1, %2</source>
        <translation>%1 的照片，%2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PieceDialog</name>
    <message>
        <source>Chamber</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>not in a chamber</source>
        <translation>不在风干室</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>添加肉块</translation>
    </message>
    <message>
        <source>Change piece %1</source>
        <translation>更改肉块 %1</translation>
    </message>
    <message>
        <source>Code on the tag</source>
        <translation>挂签上的编号</translation>
    </message>
    <message>
        <source>&amp;Code on the tag</source>
        <translation>挂签上的编号(&amp;C)</translation>
    </message>
    <message>
        <source>Cut or description</source>
        <translation>部位或说明</translation>
    </message>
    <message>
        <source>C&amp;ut or description</source>
        <translation>部位或说明(&amp;U)</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>形状</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>形状(&amp;S)</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>厚度(&amp;T)</translation>
    </message>
    <message>
        <source>Raw weight</source>
        <translation>鲜重</translation>
    </message>
    <message>
        <source>&amp;Raw weight</source>
        <translation>鲜重(&amp;R)</translation>
    </message>
    <message>
        <source>Fat, as a share of the raw piece</source>
        <translation>脂肪，占鲜肉块的比例</translation>
    </message>
    <message>
        <source>&amp;Fat share, if known</source>
        <translation>脂肪比例（如已知）(&amp;F)</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>肉皮</translation>
    </message>
    <message>
        <source>S&amp;kin</source>
        <translation>肉皮(&amp;K)</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>目标失重率</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>目标失重率(&amp;L)</translation>
    </message>
    <message>
        <source>Counted from</source>
        <translation>计算基准</translation>
    </message>
    <message>
        <source>Counted f&amp;rom</source>
        <translation>计算基准(&amp;R)</translation>
    </message>
    <message>
        <source>Cha&amp;mber</source>
        <translation>风干室(&amp;M)</translation>
    </message>
    <message>
        <source>Hook, rail or shelf</source>
        <translation>挂钩、挂杆或层架</translation>
    </message>
    <message>
        <source>&amp;Hook, rail or shelf</source>
        <translation>挂钩、挂杆或层架(&amp;H)</translation>
    </message>
    <message>
        <source>Order in the weigh-in round</source>
        <translation>巡回称重中的次序</translation>
    </message>
    <message>
        <source>&amp;Order in the round</source>
        <translation>巡回次序(&amp;O)</translation>
    </message>
    <message>
        <source>Give the piece a code: two or three letters or digits.</source>
        <translation>请给肉块编号：两三个字母或数字。</translation>
    </message>
</context>
<context>
    <name>ui::pages::PiecePage</name>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>更改(&amp;C)…</translation>
    </message>
    <message>
        <source>What &amp;happened</source>
        <translation>发生了什么(&amp;H)</translation>
    </message>
    <message>
        <source>What happened to it</source>
        <translation>它发生了什么</translation>
    </message>
    <message>
        <source>Is it &amp;done?</source>
        <translation>做好了吗(&amp;D)？</translation>
    </message>
    <message>
        <source>&amp;Weigh…</source>
        <translation>称重(&amp;W)…</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>图表显示内容</translation>
    </message>
    <message>
        <source>net weight</source>
        <translation>净重</translation>
    </message>
    <message>
        <source>Time axis</source>
        <translation>时间轴</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>按日期</translation>
    </message>
    <message>
        <source>by days since hung</source>
        <translation>按晾挂后天数</translation>
    </message>
    <message>
        <source>Show a&amp;ll</source>
        <translation>全部显示(&amp;L)</translation>
    </message>
    <message>
        <source>Save the c&amp;hart…</source>
        <translation>保存图表(&amp;H)…</translation>
    </message>
    <message>
        <source>Records of the piece</source>
        <translation>肉块记录</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>称重</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>事件</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>Pieces cut from one another</source>
        <translation>分切而来的肉块</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>谱系</translation>
    </message>
    <message>
        <source>One piece in full</source>
        <translation>单块肉的全部信息</translation>
    </message>
    <message>
        <source>Enter corrects the marked weighing; the old entry stays.</source>
        <translation>按 Enter 更正所选称重；旧条目保留。</translation>
    </message>
    <message>
        <source>C&amp;orrect…</source>
        <translation>更正(&amp;O)…</translation>
    </message>
    <message>
        <source>Take &amp;back…</source>
        <translation>撤回(&amp;B)…</translation>
    </message>
    <message>
        <source>Add a &amp;note…</source>
        <translation>添加备注(&amp;N)…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation>称重时状态</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>秤上重量</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>净重</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>说明</translation>
    </message>
    <message>
        <source>wet surface</source>
        <translation>表面潮湿</translation>
    </message>
    <message>
        <source>What</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>Net before</source>
        <translation>之前净重</translation>
    </message>
    <message>
        <source>Net after</source>
        <translation>之后净重</translation>
    </message>
    <message>
        <source>Tare after</source>
        <translation>之后皮重</translation>
    </message>
    <message>
        <source>taken back. %1</source>
        <translation>已撤回。%1</translation>
    </message>
    <message>
        <source>About</source>
        <translation>关于</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>照片</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>batch %1, %2</source>
        <translation>批次 %1，%2</translation>
    </message>
    <message>
        <source>Loss curve of %1</source>
        <translation>%1 的失重曲线</translation>
    </message>
    <message>
        <source>lost of the %1 (%2)</source>
        <translation>相对%1的失重（%2）</translation>
    </message>
    <message>
        <source>No weight to count a loss from yet.</source>
        <translation>还没有可用来计算失重的重量。</translation>
    </message>
    <message>
        <source>Target %1: %2 net, %3 on the scale</source>
        <translation>目标 %1：净重 %2，秤上 %3</translation>
    </message>
    <message>
        <source>No target set.</source>
        <translation>未设目标。</translation>
    </message>
    <message>
        <source>At target: %1</source>
        <translation>达到目标：%1</translation>
    </message>
    <message>
        <source>Levels off at %1 to %2</source>
        <translation>在 %1 至 %2 趋平</translation>
    </message>
    <message>
        <source>Signed as done.</source>
        <translation>已签名确认做好。</translation>
    </message>
    <message>
        <source>%1 of the %2</source>
        <translation>%2的 %1</translation>
    </message>
    <message>
        <source>Lost: %1</source>
        <translation>失重：%1</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>已撤回</translation>
    </message>
    <message>
        <source>corrected later</source>
        <translation>后来已更正</translation>
    </message>
    <message>
        <source>a correction</source>
        <translation>一次更正</translation>
    </message>
    <message>
        <source>Weighings (%1)</source>
        <translation>称重（%1）</translation>
    </message>
    <message>
        <source>Events (%1)</source>
        <translation>事件（%1）</translation>
    </message>
    <message>
        <source>Notes (%1)</source>
        <translation>备注（%1）</translation>
    </message>
    <message>
        <source>Family (%1)</source>
        <translation>谱系（%1）</translation>
    </message>
    <message>
        <source>This entry was corrected or taken back already; correct the newer one.</source>
        <translation>此条目已被更正或撤回；请更正较新的条目。</translation>
    </message>
    <message>
        <source>%1: %2 on the scale</source>
        <translation>%1：秤上 %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>保存图表</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
        <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
    </message>
    <message>
        <source>The chart is in %1.</source>
        <translation>图表已保存在 %1。</translation>
    </message>
    <message>
        <source>%1 could not be written. Choose another place.</source>
        <translation>%1 无法写入。请换一个位置。</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>假如(&amp;I)…</translation>
    </message>
    <message>
        <source>finish it in warm air…</source>
        <translation>用暖风收干…</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven: how long, and how long where microbes grow.</source>
        <translation>食品烘干机或低温烤箱：要多久，其中多久处于微生物生长的条件。</translation>
    </message>
    <message>
        <source>a weight is lost…</source>
        <translation>缺少一个重量…</translation>
    </message>
    <message>
        <source>A start weight was never written down: what its siblings say it was.</source>
        <translation>从未记下起始重量：根据同批肉块推算。</translation>
    </message>
    <message>
        <source>the fridge or chamber failed…</source>
        <translation>冰箱或风干室出故障…</translation>
    </message>
    <message>
        <source>Power cut, door left open: what each piece there was like, and how warm it became.</source>
        <translation>停电、门没关：那里每块肉当时的状态，以及升到多少温度。</translation>
    </message>
    <message>
        <source>Pieces on the chart</source>
        <translation>图表中的肉块</translation>
    </message>
    <message>
        <source>&amp;Earlier pieces</source>
        <translation>较早的肉块(&amp;E)</translation>
    </message>
    <message>
        <source>Own earlier pieces for comparison</source>
        <translation>自己较早的肉块，供比较</translation>
    </message>
    <message>
        <source>this piece alone</source>
        <translation>仅此肉块</translation>
    </message>
    <message>
        <source>with its batch</source>
        <translation>连同所在批次</translation>
    </message>
    <message>
        <source>with its chamber</source>
        <translation>连同所在风干室</translation>
    </message>
    <message>
        <source>with its product</source>
        <translation>连同同类产品</translation>
    </message>
    <message>
        <source>with chosen pieces…</source>
        <translation>连同所选肉块…</translation>
    </message>
    <message>
        <source>Your own finished pieces of the same product and shape, as if hung on the same day</source>
        <translation>您自己做好的同产品、同形状的肉块，视为同日晾挂</translation>
    </message>
    <message>
        <source>No piece of the same product and shape was finished yet.</source>
        <translation>尚无同产品、同形状的肉块做好。</translation>
    </message>
    <message>
        <source>loss from the %1</source>
        <translation>相对%1的失重</translation>
    </message>
    <message>
        <source>Loss curves of %1 and others</source>
        <translation>%1 及其他肉块的失重曲线</translation>
    </message>
    <message>
        <source>No other such piece was hung and weighed since.</source>
        <translation>此后没有其他此类肉块晾挂并称重。</translation>
    </message>
    <message>
        <source>Not drawn, as one chart cannot tell more apart: %1 that hung before.</source>
        <translation>因一张图无法分辨更多而未画出：更早晾挂的 %1。</translation>
    </message>
    <message>
        <source>Not drawn, as this weight of theirs is not known: %1.</source>
        <translation>因缺少该项重量而未画出：%1。</translation>
    </message>
    <message>
        <source>Enter on a note with a photo shows it large.</source>
        <translation>在带照片的备注上按 Enter 可放大显示。</translation>
    </message>
    <message>
        <source>%1 is in no chamber of the book. Choose its chamber under Change first.</source>
        <translation>%1 不在记录簿的任何风干室中。请先在“更改”中选择风干室。</translation>
    </message>
    <message>
        <source>This note has no photo.</source>
        <translation>此备注没有照片。</translation>
    </message>
    <message numerus="yes">
        <source>Leans on %n of your own finished piece(s) of this product.</source>
        <translation>
            <numerusform>参考了您自己做好的 %n 块此产品的肉块。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>计划</translation>
    </message>
    <message>
        <source>Sa&amp;ve as calendar file…</source>
        <translation>另存为日历文件(&amp;V)…</translation>
    </message>
    <message>
        <source>&amp;Use it</source>
        <translation>采用(&amp;U)</translation>
    </message>
    <message>
        <source>The stages</source>
        <translation>各阶段</translation>
    </message>
    <message>
        <source>Stages of the plan</source>
        <translation>计划的阶段</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>阶段</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>天数</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>时长</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>依据</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>空气</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>任务</translation>
    </message>
    <message>
        <source>Into the book</source>
        <translation>写入记录簿</translation>
    </message>
    <message>
        <source>Name of the batch</source>
        <translation>批次名称</translation>
    </message>
    <message>
        <source>optional, e.g. Winter coppa</source>
        <translation>选填，例如“冬季梅花肉”</translation>
    </message>
    <message>
        <source>Name of the &amp;batch</source>
        <translation>批次名称(&amp;B)</translation>
    </message>
    <message>
        <source>These weights are &amp;just off the scale</source>
        <translation>这些重量是刚称的(&amp;J)</translation>
    </message>
    <message>
        <source>These weights are just off the scale</source>
        <translation>这些重量是刚称的</translation>
    </message>
    <message>
        <source>&amp;Put the batch in the book</source>
        <translation>把批次写入记录簿(&amp;P)</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>未决定</translation>
    </message>
    <message>
        <source>Template: %1.</source>
        <translation>模板：%1。</translation>
    </message>
    <message>
        <source>Cure rules for the thickest piece, side by side: %1</source>
        <translation>最厚一块的腌制规则，并列：%1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>With “%1”</source>
        <translation>包括“%1”</translation>
    </message>
    <message>
        <source>Rounds of “%1”</source>
        <translation>“%1”的轮数</translation>
    </message>
    <message>
        <source>There is no plan to save: the day cannot be met.</source>
        <translation>没有可保存的计划：无法赶上该日期。</translation>
    </message>
    <message>
        <source>When to begin, and what to do when</source>
        <translation>何时开始，何时做什么</translation>
    </message>
    <message>
        <source>What it will be</source>
        <translation>要做成什么</translation>
    </message>
    <message>
        <source>Kind of product</source>
        <translation>产品类型</translation>
    </message>
    <message>
        <source>Your name for the product</source>
        <translation>您给产品起的名称</translation>
    </message>
    <message>
        <source>Loss aimed for</source>
        <translation>目标失重率</translation>
    </message>
    <message>
        <source>Where it will hang</source>
        <translation>晾挂地点</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>类型(&amp;K)</translation>
    </message>
    <message>
        <source>Your &amp;name for it</source>
        <translation>您起的名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Loss aimed for</source>
        <translation>目标失重率(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Hangs in</source>
        <translation>晾挂于(&amp;H)</translation>
    </message>
    <message>
        <source>The pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>重量</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>形状</translation>
    </message>
    <message>
        <source>One piece &amp;more</source>
        <translation>增加一块(&amp;M)</translation>
    </message>
    <message>
        <source>One piece &amp;fewer</source>
        <translation>减少一块(&amp;F)</translation>
    </message>
    <message>
        <source>Weight of piece %1</source>
        <translation>肉块 %1 的重量</translation>
    </message>
    <message>
        <source>Thickness of piece %1</source>
        <translation>肉块 %1 的厚度</translation>
    </message>
    <message>
        <source>Shape of piece %1</source>
        <translation>肉块 %1 的形状</translation>
    </message>
    <message>
        <source>When</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>&amp;Start on</source>
        <translation>开始于(&amp;S)</translation>
    </message>
    <message>
        <source>Start on</source>
        <translation>开始于</translation>
    </message>
    <message>
        <source>Be &amp;ready by</source>
        <translation>做好期限(&amp;R)</translation>
    </message>
    <message>
        <source>Be ready by</source>
        <translation>做好期限</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日期</translation>
    </message>
    <message>
        <source>Keep slac&amp;k for slow pieces</source>
        <translation>为慢的肉块留富余时间(&amp;K)</translation>
    </message>
    <message>
        <source>Keep slack for slow pieces</source>
        <translation>为慢的肉块留富余时间</translation>
    </message>
    <message>
        <source>Use the proposal: aim for %1</source>
        <translation>采用建议：目标 %1</translation>
    </message>
</context>
<context>
    <name>ui::pages::PlanStrip</name>
    <message>
        <source>The plan along time</source>
        <translation>沿时间展开的计划</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>ui::pages::PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>This desk</source>
        <translation>本工作台</translation>
    </message>
    <message>
        <source>Kept on this computer, not in the book. Every field still accepts any unit.</source>
        <translation>保存在本机，不在记录簿中。各字段仍可使用任何单位。</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>重量</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>克</translation>
    </message>
    <message>
        <source>grams and kilograms</source>
        <translation>克和千克</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>盎司</translation>
    </message>
    <message>
        <source>pounds and ounces</source>
        <translation>磅和盎司</translation>
    </message>
    <message>
        <source>Temperatures</source>
        <translation>温度</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>摄氏度</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>华氏度</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>厚度</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>毫米</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>英寸</translation>
    </message>
    <message>
        <source>Liquids</source>
        <translation>液体</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>毫升</translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation>美制液量盎司</translation>
    </message>
    <message>
        <source>as the computer</source>
        <translation>跟随电脑</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>语言</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>时区</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>未选择</translation>
    </message>
    <message>
        <source>Limits to check against</source>
        <translation>比对用的限量</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>颜色</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <translation>跟随桌面</translation>
    </message>
    <message>
        <source>light</source>
        <translation>浅色</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>深色</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>重量(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Temperatures</source>
        <translation>温度(&amp;T)</translation>
    </message>
    <message>
        <source>T&amp;hickness</source>
        <translation>厚度(&amp;H)</translation>
    </message>
    <message>
        <source>Li&amp;quids</source>
        <translation>液体(&amp;Q)</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>语言(&amp;G)</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>时区(&amp;Z)</translation>
    </message>
    <message>
        <source>&amp;Limits to check against</source>
        <translation>比对用的限量(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>颜色(&amp;C)</translation>
    </message>
    <message>
        <source>People</source>
        <translation>人员</translation>
    </message>
    <message>
        <source>Add a &amp;person…</source>
        <translation>添加人员(&amp;P)…</translation>
    </message>
    <message>
        <source>Who signs decisions and corrections.</source>
        <translation>为决定和更正签名的人。</translation>
    </message>
    <message>
        <source>Who works at this desk</source>
        <translation>此工作台的使用者</translation>
    </message>
    <message>
        <source>Who works at this &amp;desk</source>
        <translation>此工作台的使用者(&amp;D)</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>签名缩写</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>姓名</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>在此工作</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>是</translation>
    </message>
    <message>
        <source>no</source>
        <translation>否</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>秤</translation>
    </message>
    <message>
        <source>Add a &amp;scale…</source>
        <translation>添加秤(&amp;S)…</translation>
    </message>
    <message>
        <source>The step is the smallest change the display shows. It decides which doses the scale can weigh and how sure a curve is.</source>
        <translation>分度值是显示器能显示的最小变化。它决定秤能称哪些用量，以及曲线有多可靠。</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>秤</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>分度值</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>校验周期</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>使用中</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>未选择</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>So things read: %1, %2, %3, %4.</source>
        <translation>显示效果：%1，%2，%3，%4。</translation>
    </message>
    <message>
        <source>Units, language, limits, people and scales</source>
        <translation>单位、语言、限量、人员和秤</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n 天</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::PrintDialog</name>
    <message>
        <source>Print</source>
        <translation>打印</translation>
    </message>
    <message>
        <source>Preview of the paper</source>
        <translation>打印预览</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>打印内容</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>另存为 PDF(&amp;S)…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>打印(&amp;P)…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>No printer is set up on this computer; a PDF can be printed elsewhere.</source>
        <translation>本机未设置打印机；可将 PDF 拿到别处打印。</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <translation>没有要打印的内容。</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in %1.</source>
        <translation>
            <numerusform>%1 中共 %n 页。</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>另存为 PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <translation>
            <numerusform>已向打印机发送 %n 页。</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer took nothing. Try a PDF instead.</source>
        <translation>打印机没有接收任何内容。请改用 PDF。</translation>
    </message>
</context>
<context>
    <name>ui::pages::RestoreDialog</name>
    <message>
        <source>Restore a backup</source>
        <translation>恢复备份</translation>
    </message>
    <message>
        <source>Puts an earlier copy in the place of the book %1. Choose a copy to see what would be lost and what would come back; nothing is changed before you confirm.</source>
        <translation>用较早的副本替换记录簿 %1。选择一个副本，查看会丢失什么、会恢复什么；在您确认之前不作任何更改。</translation>
    </message>
    <message>
        <source>The backup is being read</source>
        <translation>正在读取备份</translation>
    </message>
    <message>
        <source>Another &amp;file…</source>
        <translation>其他文件(&amp;F)…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>&amp;Restore this backup…</source>
        <translation>恢复此备份(&amp;R)…</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>生成时间</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>最后条目</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>批次</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Weighings</source>
        <translation>称重</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>大小</translation>
    </message>
    <message>
        <source>File</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>Backups of this book</source>
        <translation>此记录簿的备份</translation>
    </message>
    <message>
        <source>There is no backup in the folder “backups” beside the book. Choose a copy you keep elsewhere with Another file.</source>
        <translation>记录簿旁的文件夹“backups”中没有备份。请用“其他文件”选择您存放在别处的副本。</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>备份</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft);;All files (*)</source>
        <translation>Saltloft 记录簿 (*.saltloft);;所有文件 (*)</translation>
    </message>
    <message>
        <source>Put this backup in the place of the book?</source>
        <translation>用此备份替换记录簿吗？</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>恢复</translation>
    </message>
</context>
<context>
    <name>ui::pages::ReviewPage</name>
    <message>
        <source>Is it done?</source>
        <translation>做好了吗？</translation>
    </message>
    <message>
        <source>To the &amp;piece</source>
        <translation>转到肉块(&amp;P)</translation>
    </message>
    <message>
        <source>Evidence, not a verdict. A number says how much water has gone; your hand, nose and eye say the rest. Follow the code where you live and your laboratory.</source>
        <translation>是依据，不是结论。数字说明走了多少水；其余要靠您的手、鼻、眼。遵守当地法规，听从您的实验室。</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>依据</translation>
    </message>
    <message>
        <source>What</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>此处</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>对照</translation>
    </message>
    <message>
        <source>Look, then decide</source>
        <translation>先看，再决定</translation>
    </message>
    <message>
        <source>The centre feels</source>
        <translation>中心手感</translation>
    </message>
    <message>
        <source>not felt yet</source>
        <translation>尚未触摸</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>软</translation>
    </message>
    <message>
        <source>springy</source>
        <translation>有弹性</translation>
    </message>
    <message>
        <source>firm</source>
        <translation>硬实</translation>
    </message>
    <message>
        <source>The &amp;centre feels</source>
        <translation>中心手感(&amp;C)</translation>
    </message>
    <message>
        <source>Add a &amp;note or photo…</source>
        <translation>添加备注或照片(&amp;N)…</translation>
    </message>
    <message>
        <source>&amp;Done: it comes down</source>
        <translation>做好了：取下(&amp;D)</translation>
    </message>
    <message>
        <source>Not &amp;yet: weigh and look again</source>
        <translation>还没好：再称再看(&amp;Y)</translation>
    </message>
    <message>
        <source>Disc&amp;ard: it is thrown out</source>
        <translation>丢弃：扔掉(&amp;A)</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>再次查看日期</translation>
    </message>
    <message>
        <source>&amp;Look again on</source>
        <translation>再次查看日期(&amp;L)</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>原因(&amp;W)</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>签名人</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>签名人(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Sign</source>
        <translation>签名(&amp;S)</translation>
    </message>
    <message>
        <source>Is %1 done?</source>
        <translation>%1 做好了吗？</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1：%2。%3</translation>
    </message>
    <message>
        <source>Signed before:
%1</source>
        <translation>以前的签名：
%1</translation>
    </message>
    <message>
        <source>Evidence beside each other, and a signed decision</source>
        <translation>并列的依据，以及签名的决定</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>照片</translation>
    </message>
    <message>
        <source>Add a p&amp;hoto…</source>
        <translation>添加照片(&amp;H)…</translation>
    </message>
    <message>
        <source>No photo of this piece yet. The cut face says more than a number does: take one, and the next batch can be held beside it.</source>
        <translation>这块肉还没有照片。切面比数字更能说明问题：请拍一张，下一批次就可以与它对照。</translation>
    </message>
    <message>
        <source>Finish it in warm a&amp;ir…</source>
        <translation>用暖风收干(&amp;I)…</translation>
    </message>
    <message>
        <source>H&amp;ung again: it was down, and dries on</source>
        <translation>重新晾挂：已取下，继续风干(&amp;U)</translation>
    </message>
    <message>
        <source>Hung again: it was down, and dries on</source>
        <translation>重新晾挂：已取下，继续风干</translation>
    </message>
    <message>
        <source>It goes back to the hanging pieces, and the day sheet asks for its weight again.</source>
        <translation>它回到晾挂的肉块中，当日任务单会再次要求称重。</translation>
    </message>
    <message>
        <source>For a piece that is finished. This one hangs still: sign &quot;not yet&quot;.</source>
        <translation>用于已经做好的肉块。这块仍在晾挂：请签“还没好”。</translation>
    </message>
    <message>
        <source>Choose what becomes of it first.</source>
        <translation>请先选择如何处理它。</translation>
    </message>
    <message>
        <source>Hung again. %1</source>
        <translation>已重新晾挂。%1</translation>
    </message>
    <message>
        <source>Say who signs: choose or type the name.</source>
        <translation>请说明由谁签字：选择或输入姓名。</translation>
    </message>
</context>
<context>
    <name>ui::pages::SalvageDialog</name>
    <message>
        <source>Salvage into a new book</source>
        <translation>抢救到新记录簿</translation>
    </message>
    <message>
        <source>Carries every entry of %1 that can still be read into a new book. The damaged book is not changed; keep it until you have looked through the new one.</source>
        <translation>把 %1 中还能读取的每个条目转存到新记录簿。损坏的记录簿不变；在通览新记录簿之前请保留它。</translation>
    </message>
    <message>
        <source>The book is being carried over</source>
        <translation>正在转存记录簿</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Salvage</source>
        <translation>抢救(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>打开新记录簿(&amp;O)</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>新记录簿</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>选择(&amp;H)…</translation>
    </message>
    <message>
        <source>&amp;New book</source>
        <translation>新记录簿(&amp;N)</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>条目种类</translation>
    </message>
    <message>
        <source>Carried over</source>
        <translation>已转存</translation>
    </message>
    <message>
        <source>Known to be lost</source>
        <translation>已知丢失</translation>
    </message>
    <message>
        <source>What was carried over</source>
        <translation>转存的内容</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>新记录簿</translation>
    </message>
    <message>
        <source>Saltloft books (*.saltloft)</source>
        <translation>Saltloft 记录簿 (*.saltloft)</translation>
    </message>
    <message>
        <source>Name the file of the new book.</source>
        <translation>请为新记录簿的文件命名。</translation>
    </message>
    <message>
        <source>%1 is there already and is not replaced. Choose another name.</source>
        <translation>%1 已存在，不会被替换。请换一个名称。</translation>
    </message>
    <message>
        <source>Nothing could be carried over. %1</source>
        <translation>没有任何内容可以转存。%1</translation>
    </message>
</context>
<context>
    <name>ui::pages::ScaleDialog</name>
    <message>
        <source>Change a scale</source>
        <translation>更改秤</translation>
    </message>
    <message>
        <source>Add a scale</source>
        <translation>添加秤</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Smallest step it shows</source>
        <translation>最小分度值</translation>
    </message>
    <message>
        <source>Check it every so many days</source>
        <translation>每隔多少天校验</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>使用中(&amp;U)</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>使用中</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>Smallest &amp;step it shows</source>
        <translation>最小分度值(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Check it every so many days</source>
        <translation>每隔多少天校验(&amp;C)</translation>
    </message>
    <message>
        <source>Give the scale a name, such as &quot;bench scale&quot;.</source>
        <translation>请给秤起个名称，例如“台秤”。</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorCheckDialog</name>
    <message>
        <source>Check %1</source>
        <translation>校验 %1</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>校验对照物</translation>
    </message>
    <message>
        <source>Salt slurry in a closed bag, 75 % humidity</source>
        <translation>密封袋内湿盐糊，湿度 75 %</translation>
    </message>
    <message>
        <source>Day of the check</source>
        <translation>校验日期</translation>
    </message>
    <message>
        <source>What the sensor said</source>
        <translation>传感器读数</translation>
    </message>
    <message>
        <source>What you did about it</source>
        <translation>采取的措施</translation>
    </message>
    <message>
        <source>Checked &amp;against</source>
        <translation>校验对照物(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>日期(&amp;D)</translation>
    </message>
    <message>
        <source>What the sensor &amp;said</source>
        <translation>传感器读数(&amp;S)</translation>
    </message>
    <message>
        <source>What you did about &amp;it</source>
        <translation>采取的措施(&amp;I)</translation>
    </message>
    <message>
        <source>Salt slurry: table salt just wet, in a closed bag with the sensor for twelve hours or more. Common practice: every six months; ice at least once a year.</source>
        <translation>湿盐糊：食用盐刚好润湿，与传感器一起放入密封袋，十二小时或更久。行业惯例：每六个月一次；冰水至少每年一次。</translation>
    </message>
    <message>
        <source>It is right.</source>
        <translation>读数正确。</translation>
    </message>
    <message>
        <source>It is off: add %1 K to its temperature.</source>
        <translation>有偏差：温度加 %1 K。</translation>
    </message>
    <message>
        <source>It is off: add %1 points to its humidity.</source>
        <translation>有偏差：湿度加 %1 个百分点。</translation>
    </message>
    <message>
        <source>Ice water, 0 °C</source>
        <translation>冰水，0 °C</translation>
    </message>
</context>
<context>
    <name>ui::pages::SensorDialog</name>
    <message>
        <source>Change a sensor</source>
        <translation>更改传感器</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>添加传感器</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名称</translation>
    </message>
    <message>
        <source>Where it hangs</source>
        <translation>悬挂位置</translation>
    </message>
    <message>
        <source>Added to its temperature, kelvin</source>
        <translation>温度修正值，开尔文</translation>
    </message>
    <message>
        <source>Added to its humidity, points</source>
        <translation>湿度修正值，百分点</translation>
    </message>
    <message>
        <source>points</source>
        <translation>百分点</translation>
    </message>
    <message>
        <source>In &amp;use</source>
        <translation>使用中(&amp;U)</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>使用中</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>名称(&amp;N)</translation>
    </message>
    <message>
        <source>&amp;Where it hangs</source>
        <translation>悬挂位置(&amp;W)</translation>
    </message>
    <message>
        <source>Added to its &amp;temperature</source>
        <translation>温度修正值(&amp;T)</translation>
    </message>
    <message>
        <source>Added to its &amp;humidity</source>
        <translation>湿度修正值(&amp;H)</translation>
    </message>
    <message>
        <source>Readings are kept as the sensor gave them; what is added here only changes what is shown and judged.</source>
        <translation>读数按传感器给出的原样保存；此处的修正只影响显示和判断。</translation>
    </message>
    <message>
        <source>Give the sensor a name, such as &quot;by the door&quot;.</source>
        <translation>请给传感器起个名称，例如“门边”。</translation>
    </message>
</context>
<context>
    <name>ui::pages::SplitDialog</name>
    <message>
        <source>Cut %1 into pieces</source>
        <translation>分切 %1</translation>
    </message>
    <message>
        <source>Weigh each part without casing or net. Start weight and target are shared out in proportion; the family stays.</source>
        <translation>各份称重时不带肠衣或网套。起始重量和目标按比例分摊；谱系保留。</translation>
    </message>
    <message>
        <source>Net weight before</source>
        <translation>之前净重</translation>
    </message>
    <message>
        <source>Net weight &amp;before</source>
        <translation>之前净重(&amp;B)</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;One part more</source>
        <translation>增加一份(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>有何变化</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>分切(&amp;C)</translation>
    </message>
    <message>
        <source>Code of part %1</source>
        <translation>第 %1 份的编号</translation>
    </message>
    <message>
        <source>Net weight of part %1</source>
        <translation>第 %1 份的净重</translation>
    </message>
    <message>
        <source>Part &amp;%1: code, net weight</source>
        <translation>第 &amp;%1 份：编号、净重</translation>
    </message>
    <message>
        <source>%1: %2 net</source>
        <translation>%1：净重 %2</translation>
    </message>
    <message>
        <source>, start %1</source>
        <translation>，起始 %1</translation>
    </message>
    <message>
        <source>, target %1 net</source>
        <translation>，目标净重 %1</translation>
    </message>
    <message>
        <source>Not accounted for: %1</source>
        <translation>去向不明：%1</translation>
    </message>
    <message>
        <source>The parts weigh %1 more than the whole.</source>
        <translation>各份合计比整块重 %1。</translation>
    </message>
    <message>
        <source>The parts weigh more than the whole. Check the weights, or the net weight before the cut.</source>
        <translation>各份合计比整块重。请检查各份重量，或分切前的净重。</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeDialog</name>
    <message>
        <source>Take from pack %1</source>
        <translation>从成品包 %1 取出</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>用途</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>数量</translation>
    </message>
    <message>
        <source>&amp;All that is left (%1)</source>
        <translation>剩余全部（%1）(&amp;A)</translation>
    </message>
    <message>
        <source>All that is left</source>
        <translation>剩余全部</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>给谁</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>&amp;What becomes of it</source>
        <translation>用途(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;How much</source>
        <translation>数量(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;To whom</source>
        <translation>给谁(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>Code of the new piece</source>
        <translation>新肉块的编号</translation>
    </message>
    <message>
        <source>&amp;Code of the new piece</source>
        <translation>新肉块的编号(&amp;C)</translation>
    </message>
    <message>
        <source>Piece %1 itself hangs again, at %2 lost. It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>肉块 %1 本身重新晾挂，失重 %2。从现在起它列入晾挂页和当日任务单；可用“撤销”撤回。</translation>
    </message>
    <message>
        <source>%1 of piece %2 becomes a piece of its own, which starts at the loss the whole had (%3). It is on the hanging page and the day sheet from now on; undo takes it back.</source>
        <translation>肉块 %2 中的 %1 成为单独的肉块，起始失重为整块的失重（%3）。从现在起它列入晾挂页和当日任务单；可用“撤销”撤回。</translation>
    </message>
</context>
<context>
    <name>ui::pages::TakeOnBox</name>
    <message>
        <source>I have read the &amp;cautions and take them on myself</source>
        <translation>我已阅读各项警告，并自行负责(&amp;C)</translation>
    </message>
    <message>
        <source>I have read the cautions and take them on myself</source>
        <translation>我已阅读各项警告，并自行负责</translation>
    </message>
    <message>
        <source>Cautions taken on by</source>
        <translation>警告确认人</translation>
    </message>
    <message>
        <source>Taken on b&amp;y</source>
        <translation>确认人(&amp;Y)</translation>
    </message>
    <message>
        <source>There are cautions above. Read them, then tick that you take them on.</source>
        <translation>上面有警告。请阅读，然后勾选表示您自行负责。</translation>
    </message>
    <message>
        <source>Say who takes the cautions on: choose or type the name.</source>
        <translation>请说明由谁确认这些警告：选择或输入姓名。</translation>
    </message>
</context>
<context>
    <name>ui::pages::UpsetDialog</name>
    <message>
        <source>Upset in %1</source>
        <translation>%1 异常</translation>
    </message>
    <message>
        <source>This is a record to weigh up with your own code, your adviser or a laboratory. It is of the air, not of the meat&apos;s core, and judges nothing.</source>
        <translation>这份记录供您与当地法规、顾问或实验室一起权衡。它记录的是空气，不是肉的中心，也不作任何判断。</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Keep as a note on each batch</source>
        <translation>作为备注保存到各批次(&amp;K)</translation>
    </message>
    <message>
        <source>Where the temperatures come from</source>
        <translation>温度来源</translation>
    </message>
    <message>
        <source>what I saw</source>
        <translation>本人所见</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>%1 的记录</translation>
    </message>
    <message>
        <source>Day it began</source>
        <translation>开始日期</translation>
    </message>
    <message>
        <source>Time it began</source>
        <translation>开始时刻</translation>
    </message>
    <message>
        <source>How long it lasted</source>
        <translation>持续时间</translation>
    </message>
    <message>
        <source>Usual temperature</source>
        <translation>平常温度</translation>
    </message>
    <message>
        <source>Temperature it reached</source>
        <translation>达到的温度</translation>
    </message>
    <message>
        <source>&amp;Temperatures from</source>
        <translation>温度来源(&amp;T)</translation>
    </message>
    <message>
        <source>It &amp;began</source>
        <translation>开始于(&amp;B)</translation>
    </message>
    <message>
        <source>It &amp;lasted</source>
        <translation>持续(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation>平常温度(&amp;U)</translation>
    </message>
    <message>
        <source>It &amp;reached</source>
        <translation>达到(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Show the record</source>
        <translation>显示记录(&amp;S)</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>What</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>阶段</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1，持续 %2</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>晾挂</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>失重</translation>
    </message>
    <message>
        <source>Salt, at most</source>
        <translation>含盐，至多</translation>
    </message>
    <message>
        <source>Nitrite put on</source>
        <translation>亚硝酸盐添加</translation>
    </message>
    <message>
        <source>Water activity, estimated</source>
        <translation>水分活度，估计</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 至 %2</translation>
    </message>
    <message>
        <source>Pieces, to be looked at in this order</source>
        <translation>肉块，按此顺序查看</translation>
    </message>
    <message>
        <source>Can grow</source>
        <translation>可能生长</translation>
    </message>
    <message>
        <source>Hours of air in its range</source>
        <translation>空气处于其范围内的小时数</translation>
    </message>
    <message>
        <source>Its temperatures</source>
        <translation>其温度范围</translation>
    </message>
    <message>
        <source>Water activity</source>
        <translation>水分活度</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>出处</translation>
    </message>
    <message>
        <source>Hours in growth ranges</source>
        <translation>处于生长范围的小时数</translation>
    </message>
    <message>
        <source>To be looked at in this order</source>
        <translation>请按此顺序查看</translation>
    </message>
    <message>
        <source>Hours of air in growth ranges</source>
        <translation>空气处于生长范围的小时数</translation>
    </message>
    <message>
        <source>For %1 there is no reading.</source>
        <translation>其中 %1 没有读数。</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) were there. Highest air temperature: %1.</source>
        <translation>
            <numerusform>当时有 %n 块肉。最高空气温度：%1。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The record is kept as a note on %n batch(es).</source>
        <translation>
            <numerusform>此记录已作为备注保存到 %n 个批次。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::pages::WarmDialog</name>
    <message>
        <source>%1: finish in warm air</source>
        <translation>%1：用暖风收干</translation>
    </message>
    <message>
        <source>A dehydrator or a low oven takes the last water out in hours. It also spends those hours where microbes grow. What stands here is reckoned from the piece&apos;s own pace and published figures; it judges nothing. Follow your own code.</source>
        <translation>食品烘干机或低温烤箱几小时就能去掉最后的水分。这几小时也处于微生物生长的条件。这里的内容根据肉块自身的速度和已发表的数值推算；不作任何判断。请遵守当地法规。</translation>
    </message>
    <message>
        <source>&amp;Record in the book</source>
        <translation>写入记录簿(&amp;R)</translation>
    </message>
    <message>
        <source>Air of the device</source>
        <translation>设备的空气温度</translation>
    </message>
    <message>
        <source>Its humidity</source>
        <translation>设备的湿度</translation>
    </message>
    <message>
        <source>Loss wanted</source>
        <translation>想要的失重率</translation>
    </message>
    <message>
        <source>Water of the piece now</source>
        <translation>肉块现有水分</translation>
    </message>
    <message>
        <source>Thickness now</source>
        <translation>现在的厚度</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>进展</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>已计划</translation>
    </message>
    <message>
        <source>begun now</source>
        <translation>现在开始</translation>
    </message>
    <message>
        <source>done</source>
        <translation>已完成</translation>
    </message>
    <message>
        <source>&amp;Air of the device</source>
        <translation>设备的空气温度(&amp;A)</translation>
    </message>
    <message>
        <source>Its &amp;humidity, a guess if not measured</source>
        <translation>设备的湿度，未测则为猜测(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Loss wanted</source>
        <translation>想要的失重率(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Water of the piece now</source>
        <translation>肉块现有水分(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Thickness now</source>
        <translation>现在的厚度(&amp;T)</translation>
    </message>
    <message>
        <source>How &amp;far it is</source>
        <translation>进展(&amp;F)</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>时长</translation>
    </message>
    <message>
        <source>Hours inside growth ranges</source>
        <translation>处于生长范围的小时数</translation>
    </message>
    <message>
        <source>Organism</source>
        <translation>微生物</translation>
    </message>
    <message>
        <source>In its range</source>
        <translation>在其范围内</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>对照</translation>
    </message>
    <message>
        <source>No loss is known yet: weigh the piece first, so that there is a start to count from.</source>
        <translation>尚无已知的失重：请先称重，以便有起始重量可计。</translation>
    </message>
    <message>
        <source>Fill in what is empty above, and the hours stand here.</source>
        <translation>请填写上面的空白处，小时数会显示在这里。</translation>
    </message>
    <message>
        <source>Reckoned from the pace it dries at where it hangs.</source>
        <translation>根据它在晾挂处的风干速度推算。</translation>
    </message>
    <message>
        <source>Reckoned from published figures: its own pace is not known well enough.</source>
        <translation>根据已发表的数值推算：对其自身速度了解不足。</translation>
    </message>
    <message>
        <source>There is no answer to record yet.</source>
        <translation>还没有可记录的结果。</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighInPage</name>
    <message>
        <source>Weigh-in round</source>
        <translation>巡回称重</translation>
    </message>
    <message>
        <source>Chamber</source>
        <translation>风干室</translation>
    </message>
    <message>
        <source>&amp;Chamber</source>
        <translation>风干室(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Scale</source>
        <translation>秤(&amp;S)</translation>
    </message>
    <message>
        <source>Nothing to weigh</source>
        <translation>没有要称的</translation>
    </message>
    <message>
        <source>The round lists every piece that is curing, resting or drying, in the order in which it hangs. Start a batch, then come back once a week: a number and Enter for each piece is all it takes.</source>
        <translation>巡回列出所有腌制、静置或风干中的肉块，按晾挂次序排列。开始一个批次，之后每周来一次：每块肉输入一个数字再按 Enter 即可。</translation>
    </message>
    <message>
        <source>Pieces in hanging order</source>
        <translation>按晾挂次序的肉块</translation>
    </message>
    <message>
        <source>The piece whose turn it is</source>
        <translation>轮到的肉块</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>秤上重量</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>&amp;Wet</source>
        <translation>潮湿(&amp;W)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>表面潮湿</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>note, if any</source>
        <translation>备注（如有）</translation>
    </message>
    <message>
        <source>&amp;Keep and go on  ⏎</source>
        <translation>保存并继续(&amp;K)  ⏎</translation>
    </message>
    <message>
        <source>Pass over  ⇟</source>
        <translation>跳过  ⇟</translation>
    </message>
    <message>
        <source>&amp;On the scale</source>
        <translation>秤上重量(&amp;O)</translation>
    </message>
    <message>
        <source>&amp;Tare</source>
        <translation>皮重(&amp;T)</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>晾挂于</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>编号</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>肉块</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>上次</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>本次</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>已跳过</translation>
    </message>
    <message>
        <source>all</source>
        <translation>全部</translation>
    </message>
    <message>
        <source>%1 of %2 weighed. Enter keeps and goes on; Page Down passes over.</source>
        <translation>已称 %1，共 %2。Enter 保存并继续；Page Down 跳过。</translation>
    </message>
    <message>
        <source>Last time: %1 on the scale, %2</source>
        <translation>上次：秤上 %1，%2</translation>
    </message>
    <message>
        <source>Not weighed before.</source>
        <translation>以前未称过。</translation>
    </message>
    <message>
        <source>Expected now: %1 to %2 (%3)</source>
        <translation>现在预计：%1 至 %2（%3）</translation>
    </message>
    <message>
        <source>from its forecast</source>
        <translation>根据其预测</translation>
    </message>
    <message>
        <source>from its last weight</source>
        <translation>根据上次重量</translation>
    </message>
    <message>
        <source>Expected now: %1</source>
        <translation>现在预计：%1</translation>
    </message>
    <message>
        <source>%1
If it is right, press Enter again.</source>
        <translation>%1
如果无误，请再按一次 Enter。</translation>
    </message>
    <message>
        <source>%1: %2 kept. Ctrl+Z takes it back.</source>
        <translation>%1：已保存 %2。按 Ctrl+Z 撤回。</translation>
    </message>
    <message>
        <source>Weigh-in</source>
        <translation>称重</translation>
    </message>
    <message>
        <source>Weigh every hanging piece in hanging order</source>
        <translation>按晾挂次序逐块称重</translation>
    </message>
    <message numerus="yes">
        <source>All %n piece(s) are weighed.</source>
        <translation>
            <numerusform>全部 %n 块肉均已称重。</numerusform>
        </translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>说明</translation>
    </message>
    <message>
        <source>Nothing hangs to be weighed.</source>
        <translation>没有晾挂的肉块要称。</translation>
    </message>
</context>
<context>
    <name>ui::pages::WeighingDialog</name>
    <message>
        <source>Scale</source>
        <translation>秤</translation>
    </message>
    <message>
        <source>scale not named</source>
        <translation>未指明秤</translation>
    </message>
    <message>
        <source>%1 (step %2)</source>
        <translation>%1（分度值 %2）</translation>
    </message>
    <message>
        <source>Weigh %1</source>
        <translation>称 %1</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>秤上重量</translation>
    </message>
    <message>
        <source>What hangs there</source>
        <translation>称重时状态</translation>
    </message>
    <message>
        <source>Tare</source>
        <translation>皮重</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日期</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <source>The surface is &amp;wet (just washed or wiped)</source>
        <translation>表面潮湿（刚清洗或擦拭）(&amp;W)</translation>
    </message>
    <message>
        <source>The surface is wet</source>
        <translation>表面潮湿</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>秤上重量(&amp;S)</translation>
    </message>
    <message>
        <source>W&amp;hat is on it</source>
        <translation>称重时状态(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Tare (casing, net, hook)</source>
        <translation>皮重（肠衣、网套、挂钩）(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>日期(&amp;D)</translation>
    </message>
    <message>
        <source>Ti&amp;me</source>
        <translation>时间(&amp;M)</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>秤(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>备注(&amp;N)</translation>
    </message>
    <message>
        <source>Why it is corrected</source>
        <translation>更正原因</translation>
    </message>
    <message>
        <source>e.g. misread, wrong tare</source>
        <translation>例如读错、皮重错误</translation>
    </message>
    <message>
        <source>Wh&amp;y it is corrected</source>
        <translation>更正原因(&amp;Y)</translation>
    </message>
    <message>
        <source>Net weight: %1</source>
        <translation>净重：%1</translation>
    </message>
    <message>
        <source>%1 lost of the %2</source>
        <translation>相对%2失重 %1</translation>
    </message>
    <message>
        <source>Say in a few words why the entry is corrected; the old one stays readable beside it.</source>
        <translation>请简单说明为何更正；旧条目仍可在旁边看到。</translation>
    </message>
    <message>
        <source>Correct %1: weighing of %2</source>
        <extracomment>%1 a piece&apos;s code, %2 a moment</extracomment>
        <translation>更正 %1：%2 的称重</translation>
    </message>
</context>
<context>
    <name>ui::pages::WhatIfDialog</name>
    <message>
        <source>%1: what if…</source>
        <translation>%1：假如…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>关闭(&amp;C)</translation>
    </message>
    <message>
        <source>Nothing to compare yet</source>
        <translation>还没有可比较的内容</translation>
    </message>
    <message>
        <source>A forecast needs the weight its loss is counted from, and weighings since it was hung. Weigh the piece, or choose another weight to count from under Change.</source>
        <translation>预测需要计算失重所依据的重量，以及晾挂以来的称重。请称这块肉，或在“更改”中选择另一计算基准。</translation>
    </message>
    <message>
        <source>The change holds from the last weighing on, and exactly as entered. Nothing of this is kept.</source>
        <translation>改变从最后一次称重起生效，并严格按输入的数值。这里的内容都不保存。</translation>
    </message>
    <message>
        <source>The piece has no target; 35 % of the hung weight is taken to begin with.</source>
        <translation>这块肉没有目标；先按晾挂重量的 35 % 计。</translation>
    </message>
    <message>
        <source>Humidity ahead</source>
        <translation>今后的湿度</translation>
    </message>
    <message>
        <source>Temperature ahead</source>
        <translation>今后的温度</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>目标</translation>
    </message>
    <message>
        <source>&amp;Humidity of the chamber</source>
        <translation>风干室的湿度(&amp;H)</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the chamber</source>
        <translation>风干室的温度(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Target, loss</source>
        <translation>目标失重率(&amp;T)</translation>
    </message>
    <message>
        <source>Filled in: the last steady stretch of the chamber&apos;s log.</source>
        <translation>已填入：风干室记录中最近的平稳时段。</translation>
    </message>
    <message>
        <source>Filled in: a usual air, as no log says what it is (common practice, no source).</source>
        <translation>已填入：通常的空气，因为没有记录说明实际情况（行业惯例，无出处）。</translation>
    </message>
    <message>
        <source>&amp;Use that humidity</source>
        <translation>采用该湿度(&amp;U)</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>现状</translation>
    </message>
    <message>
        <source>With the change</source>
        <translation>改变后</translation>
    </message>
    <message>
        <source>As it is and with the change</source>
        <translation>现状与改变后</translation>
    </message>
    <message>
        <source>Fill in what is empty above.</source>
        <translation>请填写上面的空白处。</translation>
    </message>
    <message>
        <source>Reckoning…</source>
        <translation>正在推算…</translation>
    </message>
    <message>
        <source>As it is; nothing is changed yet</source>
        <translation>现状；尚未改变</translation>
    </message>
    <message>
        <source>As it is, and with the change</source>
        <translation>现状与改变后</translation>
    </message>
    <message>
        <source>Change the temperature to see which humidity there has the drying power of the air as it is.</source>
        <translation>改变温度，可看出在该温度下哪个湿度的干燥力与现状的空气相同。</translation>
    </message>
    <message>
        <source>In the cited growth ranges as it is, by temperature alone: %1. Water, salt and acid count too; the program judges none of it.</source>
        <translation>现状下仅按温度计，处于所引生长范围：%1。水分、盐和酸也有影响；程序对此不作任何判断。</translation>
    </message>
</context>
<context>
    <name>ui::pages::WithdrawDialog</name>
    <message>
        <source>Take back</source>
        <translation>撤回</translation>
    </message>
    <message>
        <source>%1
The entry no longer counts, but stays readable in the history.</source>
        <translation>%1
该条目不再计入，但仍可在历史中查看。</translation>
    </message>
    <message>
        <source>Why it is taken back</source>
        <translation>撤回原因</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>原因(&amp;W)</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>撤回(&amp;T)</translation>
    </message>
    <message>
        <source>Say in a few words why.</source>
        <translation>请简单说明原因。</translation>
    </message>
</context>
<context>
    <name>ui::presenters::DayWork</name>
    <message>
        <source>today</source>
        <translation>今天</translation>
    </message>
    <message>
        <source>done</source>
        <translation>已完成</translation>
    </message>
    <message>
        <source>Opens the weigh-in. The line goes when the weight is in the book.</source>
        <translation>打开称重。重量写入记录簿后，此行消失。</translation>
    </message>
    <message>
        <source>Opens the evidence for this piece.</source>
        <translation>打开这块肉的依据。</translation>
    </message>
    <message>
        <source>Opens the stock. The line goes when the packs are gone.</source>
        <translation>打开库存。成品包用完后，此行消失。</translation>
    </message>
    <message>
        <source>Opens the instruments. The line goes when a check is entered.</source>
        <translation>打开仪器。录入校验后，此行消失。</translation>
    </message>
    <message>
        <source>Begins the stage now.</source>
        <translation>现在开始此阶段。</translation>
    </message>
    <message>
        <source>Ends the stage now.</source>
        <translation>现在结束此阶段。</translation>
    </message>
    <message>
        <source>Takes the tick back.</source>
        <translation>取消勾选。</translation>
    </message>
    <message>
        <source>Ticks it off as done.</source>
        <translation>勾选为已完成。</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>逾期 %1 项</translation>
    </message>
    <message>
        <source>%1 for today</source>
        <translation>今天 %1 项</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>已完成 %1 项</translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s)</source>
        <translation>
            <numerusform>%n 个成品包</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n 块肉</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>逾期 %n 天</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n time(s) missed</source>
        <extracomment>%1 how late, %n how often it was not done</extracomment>
        <translation>
            <numerusform>%1，漏做 %n 次</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::LostWeight</name>
    <message>
        <source>estimated, %1 to %2</source>
        <translation>估计值，%1 至 %2</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanCalendar</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Saltloft</source>
        <translation>Saltloft</translation>
    </message>
</context>
<context>
    <name>ui::presenters::PlanDraft</name>
    <message>
        <source>Ready about %1</source>
        <translation>约 %1 做好</translation>
    </message>
    <message>
        <source>Start today</source>
        <translation>今天开始</translation>
    </message>
    <message>
        <source>Start by %1</source>
        <translation>最迟 %1 开始</translation>
    </message>
    <message>
        <source>Likely ready %1; the rest until %2 is slack.</source>
        <translation>很可能 %1 做好；其后至 %2 为富余时间。</translation>
    </message>
    <message>
        <source>No slack: half of such plans end later than %1.</source>
        <translation>没有富余时间：这类计划有一半会晚于 %1 结束。</translation>
    </message>
    <message>
        <source>Not by %1</source>
        <translation>赶不上 %1</translation>
    </message>
    <message>
        <source>Plan it smaller</source>
        <translation>计划小一些</translation>
    </message>
    <message>
        <source>A piece of at most %1 and %2 would be ready by %3.</source>
        <translation>不超过 %1 和 %2 的肉块可在 %3 之前做好。</translation>
    </message>
    <message>
        <source>Plan this instead</source>
        <translation>改按此计划</translation>
    </message>
    <message>
        <source>Plan for that day</source>
        <translation>按那一天计划</translation>
    </message>
    <message>
        <source>Begun today, it would be ready by %1.</source>
        <translation>今天开始，可在 %1 之前做好。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 % RH</source>
        <translation>%1 % RH</translation>
    </message>
    <message>
        <source>%1, in the end %2</source>
        <extracomment>a band that changes over the stage: from %1, in the end %2</extracomment>
        <translation>%1，最后 %2</translation>
    </message>
    <message>
        <source>%1 for %2 in every %3</source>
        <translation>%1，每 %3 持续 %2</translation>
    </message>
    <message>
        <source>%1 every day</source>
        <translation>%1，每天</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1，每 %2</translation>
    </message>
    <message>
        <source>%1 on day %2</source>
        <translation>%1，第 %2 天</translation>
    </message>
    <message>
        <source> and </source>
        <translation> 和 </translation>
    </message>
    <message>
        <source>inch</source>
        <translation>英寸</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 天</translation>
    </message>
    <message>
        <source>%1 days per %2</source>
        <translation>每 %2 %1 天</translation>
    </message>
    <message>
        <source>%1 plus %2: %3</source>
        <translation>%1 加 %2：%3</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>略去</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>By diffusion the centre has come close to the rest after %1.</source>
        <translation>按扩散计算，中心在 %1 后已与其余部分接近。</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start.</source>
        <translation>
            <numerusform>从开始起 %n 天。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from the start; it may be %1.</source>
        <translation>
            <numerusform>从开始起 %n 天；也可能是 %1。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It would be %n day(s) late. A stronger dose or a shorter cure does not help: salt needs its time.</source>
        <translation>
            <numerusform>会晚 %n 天。加大用量或缩短腌制都没有用：盐需要时间。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n day(s) for its usual piece, %2 to spare.</source>
        <translation>
            <numerusform>%1 的常见肉块需要 %n 天，余 %2。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 every %n day(s)</source>
        <translation>
            <numerusform>%1，每 %n 天</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) of %1</source>
        <translation>
            <numerusform>%n 轮，每轮 %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::WatchedFolder</name>
    <message>
        <source>The watched folder %1 is not there.</source>
        <translation>监视的文件夹 %1 不存在。</translation>
    </message>
    <message>
        <source>%1 is in the watched folder, but part of how it reads is a guess: import it once by hand.</source>
        <translation>%1 在监视的文件夹中，但其读法有一部分是猜测：请手动导入一次。</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the watched folder: %n new reading(s).</source>
        <translation>
            <numerusform>来自监视文件夹的 %1：%n 个新读数。</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ui::presenters::Workspace</name>
    <message>
        <source>Undo: %1</source>
        <translation>撤销：%1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>重做：%1</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>已保存：%1。</translation>
    </message>
    <message>
        <source>Undone: %1.</source>
        <translation>已撤销：%1。</translation>
    </message>
    <message>
        <source>Done again: %1.</source>
        <translation>已重做：%1。</translation>
    </message>
</context>
</TS>
